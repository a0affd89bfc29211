package words

// How well a number fits a fact is a sum of points.
const (
	pointsSaid      = 6.0 // the number stands inside a phrase of the fact
	pointsNear      = 4.0 // a phrase of the fact stands right beside it
	pointsWord      = 0.6 // for each further word of the phrase
	pointsApart     = 0.3 // off for each unit of distance
	pointsBetween   = 1.8 // off for each number of the same sort that stands between
	pointsWeak      = 5.2 // a phrase with no more points counts half where nothing of the fact stands near
	pointsPair      = 1.5 // where a number is set against one of the same topic ("air 6.2 for 6 ordered")
	pointsGoesOn    = 1.0 // where a bare number goes on with the unit of the one before it ("sand at 6 percent, rock at 1.5")
	pointsTopic     = 0.1 // where a phrase of the fact stands anywhere in the sentences around it
	topicReach      = 30.0
	pointsBoth      = 0.35 // of the weaker, where a phrase holds the number and another stands near
	pointsTaken     = 2.5  // off when the phrase has its number already
	pointsRole      = 2.5  // the number plays the role that the fact has (ordered, measured)
	pointsOtherRole = 0.6  // off, as a share, when it plays another
	pointsUsual     = 0.5  // within the usual range
	pointsUnusual   = -0.7 // outside it
	pointsNever     = 8.0  // off when a phrase says that it is something else
	neverReach      = 9.0  // how near such a phrase must stand
	enough          = 3.0  // a number with fewer points is not read
	hardly          = 2.5  // a number with fewer points is not read even where nothing else claims it
	ahead           = 1.3  // how far a weak fit must be ahead
	tooClose        = 0.5  // two facts whose points differ by less are a question
	bareReach       = 4.5  // how far a bare number may stand from the word that gives it its unit
)
