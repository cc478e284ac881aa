# What the language is called by those who speak it.
language-name = Français
# The country whose lists and decimals are written.
language-locale = fr-FR
