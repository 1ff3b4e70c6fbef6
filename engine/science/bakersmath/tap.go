package bakersmath

// IceForTap is the share of ice at 0 C in a water that it brings to
// needC from a tap at tapC: the ice is part of the water. 0 where the
// tap is cool enough. ok is false where needC is below 0 C or a figure
// is not a number.
//
// The trade's tables take 80 K for the melting: share = (tap - need) /
// (tap + 80). Here it is IceMeltKJ over HeatWaterKJ, 79.9 K.
func IceForTap(tapC, needC float64) (share float64, ok bool) {
	if !(needC >= 0) || !(tapC >= 0) {
		return 0, false
	}
	if needC >= tapC {
		return 0, true
	}
	return answer((tapC - needC) / (tapC + IceMeltKJ/HeatWaterKJ))
}
