# What the language is called by those who speak it.
language-name = Español
# The country whose lists and decimals are written.
language-locale = es-ES
