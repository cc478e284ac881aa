# A hundred cups of a drink as the counter makes them.

# What the cups are held to, in place of { $held }.
cups-the-standard = the standard
cups-the-recipe = the recipe as it is written
# { $held } is one of the two above, { $off } a list: "5 are sweeter and 2 are cooler".
cups-some = { $count ->
    [one] { $count } of 100 cups tastes like { $held }.
   *[other] { $count } of 100 cups taste like { $held }.
}
cups-some-off = { $count ->
    [one] { $count } of 100 cups tastes like { $held }; { $off }.
   *[other] { $count } of 100 cups taste like { $held }; { $off }.
}
cups-all = All cups taste like { $held }.
cups-nearly-all = More than 99 of 100 cups taste like { $held }.
cups-hardly-any = Fewer than 1 of 100 cups taste like { $held }.
cups-hardly-any-off = Fewer than 1 of 100 cups taste like { $held }; { $off }.
cups-none = No cup tastes like { $held }.
cups-none-off = No cup tastes like { $held }; { $off }.
# { $change } is "sweeter" or "less sweet"; of a tea or a flavour "stronger tea", "more chestnut".
cups-off = { $count ->
    [one] { $count } is { $change }
   *[other] { $count } are { $change }
}
cups-off-holding = { $count ->
    [one] { $count } has { $change }
   *[other] { $count } have { $change }
}
cups-off-nearly-all = more than 99 are { $change }
cups-off-holding-nearly-all = more than 99 have { $change }
cups-off-all = all are { $change }
cups-off-holding-all = all have { $change }
cups-nothing-known = Nobody knows how these cups taste: no axis of taste is known. Enter what is missing on the labels.
# { $share } is a figure with its doubt: "93.2 ± 0.5".
cups-drawn = { $cups } cups in { $shifts } shifts were drawn from what varies at the counter: { $share } of 100 taste like it. The worst shift of ten has { $low } or fewer, the best { $high } or more.
# { $changes } is a list: "sweeter by 1.9 steps".
cups-recipe-off = The recipe itself is { $changes }, even if nothing scatters.
cups-not-known = { $axes } of these cups is not known: fewer may taste like it.

# What would help, each with the cups of a hundred that taste right then: { $share } is "97", "more than 99".
cups-helps-level = Bring the recipe back level: { $share } of 100 cups.
cups-helps-weigh = Weigh { $grams } of { $ingredient } instead of measuring { $amount }: { $share } of 100 cups.
cups-helps-smaller = Measure { $ingredient } with a { $measure } of half the size, twice as often: { $share } of 100 cups.
cups-helps-recalibrate = Check every day what the { $measure } gives, and correct it: { $share } of 100 cups.
# { $what } is the temperature of something, { $limits } what the thermometer may be off by.
cups-helps-thermometer = Hold { $what } to ± { $limits } with a thermometer: { $share } of 100 cups.
cups-helps-nothing = Nothing that can be done at the counter brings noticeably more cups there.
cups-share-all = all
cups-share-nearly-all = more than 99
cups-share-hardly-any = fewer than 1
cups-share-none = none

# { $causes } is a list of what varies.
cups-each-cup = From cup to cup varies most: { $causes }.
cups-each-shift = From shift to shift varies most: { $causes }.
cups-held = What is the same in every cup does not scatter, however well it is known, and stays as it is: labels, other figures of ingredients, and what a measure gives on average.

# Why one cup is off. { $measured } is what was read: weight, temperature, brix or ice; { $side } is where it lies beside what it should be.
why-off-reading = { $measured ->
    [weight] { $side ->
        [above] It weighs { $read }, more than the { $should } that it should.
        [below] It weighs { $read }, less than the { $should } that it should.
       *[as-expected] It weighs { $read }, as it should: { $should }.
    }
    [temperature] { $side ->
        [above] It has { $read }, more than the { $should } that it should.
        [below] It has { $read }, less than the { $should } that it should.
       *[as-expected] It has { $read }, as it should: { $should }.
    }
    [brix] { $side ->
        [above] It reads { $read }, more than the { $should } that it should.
        [below] It reads { $read }, less than the { $should } that it should.
       *[as-expected] It reads { $read }, as it should: { $should }.
    }
   *[ice] { $side ->
        [above] It holds { $read } of ice, more than the { $should } that it should.
        [below] It holds { $read } of ice, less than the { $should } that it should.
       *[as-expected] It holds { $read } of ice, as it should: { $should }.
    }
}
why-off-not-known = { $measured ->
    [weight] What this drink should weigh is not known: { $read } can’t be compared.
    [temperature] How warm this drink should be is not known: { $read } can’t be compared.
    [brix] The °Brix of this drink is not known: { $read } can’t be compared.
   *[ice] There is no ice in this drink that { $read } could be compared with.
}
why-off-nothing-to-compare = Nothing that was read can be compared with the drink.
# { $cause } is one of the faults below or scatter alone, { $chance } a percentage.
why-off-cause = { $cause } ({ $chance })
why-off-likely = Most likely: { $cause } ({ $chance }).
why-off-others = Less likely: { $causes }.
why-off-cannot-tell = These readings can’t tell which it was: { $causes }.
why-off-unexplained = No single cause explains this: more than one thing went wrong, or something was read wrongly.
why-off-next = { $measured ->
    [weight] Weigh what is in the cup next. The likeliest cause then has { $chance } on average.
    [temperature] Measure its temperature next. The likeliest cause then has { $chance } on average.
    [brix] Read its °Brix next. The likeliest cause then has { $chance } on average.
   *[ice] Fish out the ice and weigh it next. The likeliest cause then has { $chance } on average.
}
why-off-over = more than { $percent }
why-off-under = less than { $percent }

# What can go wrong with one cup. { $uses } is "1 scoop", { $grams } and { $kelvin } are figures with their doubt.
fault-none = only scatter
fault-one-more = { $uses } of { $ingredient } too many
fault-one-fewer = { $uses } of { $ingredient } too few
fault-left-out = { $ingredient } left out
fault-too-much = { $grams } too much { $ingredient }
fault-too-little = { $grams } too little { $ingredient }
fault-warmer = { $what }, { $kelvin } too warm
fault-cooler = { $what }, { $kelvin } too cool

# The cups beside the level.
cups-title = A hundred cups
cups-show = Show a hundred cups
cups-hide = Hide the hundred cups
cups-drawing = Drawing cups …
cups-nothing-in-it = There is nothing in the cup yet.
cups-strip-about = Each dot is one cup of a hundred; the band is one noticeable step either side. On the right: cups of 100 within it.
# { $fewer } is "less sweet", { $further } "sweeter".
cups-strip = { $axis }: { $within } of 100 cups within a step, { $less } { $fewer }, { $more } { $further }.
cups-what-helps = What would help most
# { $place } is 1, 2, 3 …; { $help } one of the sentences about what would help.
cups-help-in-place = { $place }. { $help }

# A cup that is off, as it is served.
serving-cup-about = Enter what you weigh or read of one cup, any of it. The weight is that of what is in the cup, without the cup.
serving-cup-reading = { $measured ->
    [weight] weight
    [temperature] temperature
    [brix] °Brix
   *[ice] ice in it
}
serving-cup-reading-named = { $measured ->
    [weight] Weight of what is in the cup
    [temperature] Temperature of the cup
    [brix] °Brix of the cup
   *[ice] Weight of the ice in the cup
}
