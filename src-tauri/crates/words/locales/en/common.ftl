# Words that every way in shares.
verdict-pass = PASS
verdict-caution = CAUTION
verdict-stop = STOP
verdict-unsettled = NOT SETTLED
unverified = unverified
yours = yours
