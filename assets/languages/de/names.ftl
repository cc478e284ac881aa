# What the language is called by those who speak it.
language-name = Deutsch
# The country whose lists and decimals are written.
language-locale = de-DE
