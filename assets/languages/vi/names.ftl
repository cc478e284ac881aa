# What the language is called by those who speak it.
language-name = Tiếng Việt
# The country whose lists and decimals are written.
language-locale = vi-VN
