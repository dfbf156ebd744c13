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
