# Words that every way in shares.
verdict-pass = PASS
verdict-caution = CAUTION
verdict-stop = STOP
verdict-unsettled = NOT SETTLED
unverified = unverified
yours = yours

# Forms of ends
form-elbow = { $angle }° elbow
form-straight = straight
form-compact90 = compact 90° elbow
form-standpipe = standpipe
form-banjo = banjo

# What a figure rests on
basis-published = published
basis-derived = computed from published figures
basis-reference-library = computed by a reference library
basis-common-practice = common practice
basis-memory = recalled, unverified
basis-lower-of-two = lower of two printed figures
basis-bounded = set from printed figures of neighbours
basis-proxy = figure of another end, not this one's
basis-none = not known
basis-yours = yours

# Ends and covers
gender-male = male
gender-female = female
cover-plain = plain cover
cover-non-conductive = non-conductive cover
cover-flame-resistant = flame-resistant cover
cover-antistatic = antistatic cover

# What a proof came to, on labels too: keep these short.
label-proved = proved { $pressure }
label-not-proved = NOT PROVED
label-no-rig = NOT PROVED: no rig
