# The frame round every screen: the strip on top with its menus, the list of recipes, messages.
strip-language = Language
