# What the language is called by those who speak it.
language-name = English
# The country whose lists and decimals are written.
language-locale = en-GB
