// Walls whose bricks come out with cuts in the middle of them, and the small moves after which they
// would not.
#include <algorithm>
#include <cmath>

#include "model/asbuilt/words.h"
#include "model/bond/bond_moves.h"
#include "model/bond/dry_bond.h"
#include "model/designer/sheet_parts.h"
#include "model/walls/leaf_plan.h"

namespace model {

namespace {

// "corner A to Kitchen window: 37.5 over 6 half bricks".
std::string brokenWords(const SheetData& data, const DryBond& bond, const DryStretch& stretch) {
  const std::string where = stretch.opening
                                ? "under " + openingLabel(data.model.settingOut, *stretch.opening)
                                : stretch.first + " to " + stretch.last;
  if (stretch.fit.pattern) return where + ": the bond from both ends does not meet";
  const BrickSize nearest = nearestBrickSize(bond.sizes, stretch.to - stretch.from);
  return where + ": " + millimetres(std::abs(nearest.over)) +
         (nearest.over > 0 ? " over " : " short of ") + std::to_string(nearest.halfBricks) +
         " half bricks";
}

std::string moveWords(const SettingOut& out, const WallLine& line, const OpeningMove& move) {
  std::vector<std::string> parts;
  if (move.shift != 0) {
    const size_t end = move.shift < 0 ? line.from : line.to;
    const size_t other = move.shift < 0 ? line.to : line.from;
    std::string words =
        millimetres(std::abs(move.shift)) + " towards corner " + out.corners[end].letter;
    if (move.otherShift != 0)
      words += " (or " + millimetres(std::abs(move.otherShift)) + " towards " +
               out.corners[other].letter + ")";
    parts.push_back(words);
  }
  if (std::abs(move.wider) >= 5e-5)
    parts.push_back(millimetres(std::abs(move.wider)) + (move.wider > 0 ? " wider" : " narrower"));
  return openingLabel(out, move.opening) + " " + listedWords(parts);
}

std::string lengthWords(double longer) {
  return millimetres(std::abs(longer)) + (longer > 0 ? " longer" : " shorter");
}

std::string movesWords(const SettingOut& out, const WallMoves& moves) {
  const WallLine& line = out.walls[moves.wall];
  std::string words;
  for (const OpeningMove& move : moves.openings)
    words += (words.empty() ? "" : "; ") + moveWords(out, line, move);
  if (moves.longer != 0) {
    words +=
        (words.empty() ? "" : "; ") + std::string("the wall itself ") + lengthWords(moves.longer);
    if (moves.otherLonger != 0) words += " (or " + lengthWords(moves.otherLonger) + ")";
  }
  return words;
}

}  // namespace

std::vector<SheetQuestion> bondQuestions(const SheetData& data) {
  const SettingOut& out = data.model.settingOut;
  const DryBond bond = deriveDryBond(data.model.job, out);
  const std::vector<WallMoves> moves = brickSizeMoves(bond);
  std::vector<SheetQuestion> questions;
  for (size_t i = 0; i < bond.walls.size(); ++i) {
    std::vector<std::string> broken;
    for (const DryStretch& stretch : bond.walls[i].stretches)
      if (!stretch.movement && (!stretch.fit.regular || stretch.fit.pattern))
        broken.push_back(brokenWords(data, bond, stretch));
    if (broken.empty() && moves[i].none()) continue;
    const WallLine& line = out.walls[bond.walls[i].wall];
    SheetQuestion question;
    question.by = AskedBy::Bond;
    question.about = "Bond of wall " + line.name;
    question.text = "Not in brick sizes";
    for (size_t k = 0; k < broken.size(); ++k) question.text += (k == 0 ? ": " : "; ") + broken[k];
    const std::string offered = movesWords(out, moves[i]);
    question.text += offered.empty() ? ". May bricks be cut there?"
                                     : ". It would come out with: " + offered +
                                           ". Is any of it to be moved, or are bricks to be cut?";
    question.assumed = "all stays where it is drawn, and bricks are cut";
    question.changes = "cuts and broken bond in the face of wall " + line.name;
    question.stage = firstOf(data.model.programme, {StageKind::TrenchDig, StageKind::FoundationPour,
                                                    StageKind::WallsBelowDampCourse});
    if (moves[i].longer == 0)
      question.stage =
          firstOf(data.model.programme, {StageKind::WallsBelowDampCourse, StageKind::RaiseCorners});
    question.at = line.at(line.length / 2);
    questions.push_back(std::move(question));
  }
  return questions;
}

}  // namespace model
