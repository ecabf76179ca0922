// Ties and boards against what is published and against the coursing.
#include <cmath>

#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kTolerance = 1e-6;

// Check M11: LABC Warranty, "How to use cavity wall ties to meet Building Regulations": 2.5 a
// square metre, which 900 across by 450 up comes to when it is rounded.
void warnOfFewTies(const Validation& v, const BuiltIn& built) {
  if (!v.known.has("walls.tie_across") || !v.known.has("walls.tie_up")) return;
  constexpr double kMost = 0.900 * 0.450;
  if (built.tieAcross * built.tieUp <= kMost + kTolerance) return;
  v.warning(
      built.tieAcross > 0.900 + kTolerance ? "walls.tie_across" : "walls.tie_up",
      "ties " + lengthWords(built.tieAcross) + " across and " + lengthWords(built.tieUp) +
          " up are fewer than 2.5 a square metre",
      "900 across and 450 up is the usual widest spacing (LABC Warranty); the drawing decides");
}

// Check M12: notes to the tie table of Approved Document A.
void warnOfEdges(const Validation& v, const BuiltIn& built) {
  if (v.known.has("walls.tie_up_beside") && built.tieUpBeside > 0.300 + kTolerance) {
    v.warning("walls.tie_up_beside",
              "ties beside openings are " + lengthWords(built.tieUpBeside) + " apart",
              "at most 300 mm (Approved Document A, notes to the table of ties); the drawing "
              "decides");
  }
  if (v.known.has("walls.tie_within") && built.tieWithin > 0.225 + kTolerance) {
    v.warning("walls.tie_within",
              "ties beside openings lie up to " + lengthWords(built.tieWithin) + " from them",
              "within 225 mm (Approved Document A, notes to the table of ties); the drawing "
              "decides");
  }
}

// Ties lie in beds of the inner leaf.
void warnOfBeds(const Validation& v, const BuiltIn& built) {
  if (!v.known.has({"walls.block_height", "walls.joint"})) return;
  const double bed = v.job.walls.blockHeight + v.job.walls.joint;
  const auto tooClose = [&](const char* key, double apart) {
    if (!v.known.has(key) || apart >= bed - kTolerance) return;
    v.warning(key,
              "ties " + lengthWords(apart) + " apart in height, but beds of the inner leaf are " +
                  lengthWords(bed) + " apart",
              "there is one in every bed then; for more, lower blocks are needed");
  };
  tooClose("walls.tie_up", built.tieUp);
  tooClose("walls.tie_up_beside", built.tieUpBeside);
}

// NHBC Standards, chapter 6.1, clause 12: 100 for openings up to 1.2 m, else 150.
void lintelHolds(const Validation& v, size_t index) {
  const Opening& opening = v.job.openings[index];
  const std::string path = "opening[" + std::to_string(index) + "]";
  // Without its name it would be told of by another.
  if (!v.known.has(path) || !v.known.has(path + ".name") || !v.known.has(path + ".lintel_bearing"))
    return;
  const std::string who = opening.name.empty() ? "opening " + std::to_string(index + 1)
                                               : "opening \"" + opening.name + "\"";
  if (v.known.has(path + ".width")) {
    const double least = opening.width > 1.2 + kTolerance ? 0.150 : 0.100;
    if (opening.lintelBearing < least - kTolerance)
      v.warning(path + ".lintel_bearing",
                who + ": its lintels bear on " + lengthWords(opening.lintelBearing) + " only",
                "at least " + lengthWords(least) + " for an opening of " +
                    lengthWords(opening.width) + " (NHBC Standards, 6.1.12); the drawing decides");
  }
  if (v.known.has(path + ".padstone") && opening.padstone > 0 &&
      opening.padstone < opening.lintelBearing - kTolerance)
    v.error(path + ".padstone",
            who + ": a padstone of " + lengthWords(opening.padstone) +
                " is shorter than the bearing on it, " + lengthWords(opening.lintelBearing),
            "make it at least that long, or leave it out");
}

}  // namespace

void validateBuiltIn(const Validation& v) {
  for (size_t i = 0; i < v.job.openings.size(); ++i) lintelHolds(v, i);
  if (v.job.walls.cavity <= 0) return;
  const BuiltIn& built = v.job.walls.builtIn;
  warnOfFewTies(v, built);
  warnOfEdges(v, built);
  warnOfBeds(v, built);
}

}  // namespace model
