#include "model/lines/boards.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "model/works/ground_zones.h"
#include "model/works/profile_levels.h"
#include "model/works/profile_places.h"

namespace model {

namespace {

constexpr double kReach = 3.0;  // beyond it nothing is in a board's way

class BoardMaker {
 public:
  BoardMaker(const Job& job, const SettingOut& out)
      : job_(job), out_(out), ground_(job, out), ends_(placeProfiles(job, out)) {
    top_ = profileTop(out, ground_, ends_);
  }

  BoardPlan make() {
    BoardPlan plan;
    for (size_t i = 0; i < out_.walls.size(); ++i) {
      faces_ = facesOf(job_, out_, i);
      const LineEnds& ends = ends_[i];
      if (ends.atStart) plan.boards.push_back(board(i, false, *ends.atStart, ends.atEnd));
      if (ends.atEnd) plan.boards.push_back(board(i, true, *ends.atEnd, ends.atStart));
      if (!ends.atStart || !ends.atEnd) plan.offsets.push_back(offset(i, ends));
    }
    return plan;
  }

 private:
  const std::string& letter(size_t wall, bool atEnd) const {
    return out_.corners[atEnd ? out_.walls[wall].to : out_.walls[wall].from].letter;
  }

  std::string boardName(size_t wall, bool atEnd) const {
    return out_.walls[wall].name + " beyond " + letter(wall, atEnd);
  }

  Board board(size_t index, bool atEnd, const LineEnd& end,
              const std::optional<LineEnd>& other) const {
    const WallLine& wall = out_.walls[index];
    Board board;
    board.name = boardName(index, atEnd);
    board.wall = index;
    board.atEnd = atEnd;
    board.corner = letter(index, atEnd);
    board.beyond = atEnd ? end.s - wall.length : -end.s;
    double outside = 1e300, inside = -1e300;  // inward, of the rail's two ends
    for (const Vec2& p : end.rail) {
      const double inward = -glm::dot(p - wall.start, wall.outward);
      outside = std::min(outside, inward);
      inside = std::max(inside, inward);
    }
    board.from = wall.at(end.s, outside);
    board.to = wall.at(end.s, inside);
    // Walls run anticlockwise: the outside is on the right of the way along them.
    board.measuredFrom = atEnd ? "left-hand end" : "right-hand end";
    board.top = top_;
    const FoundationRun& run = out_.foundations[runAtCorner(index, atEnd)];
    board.downToConcrete = top_ - run.top;
    board.downToFormation = top_ - (run.onCellar ? out_.levels.cellarFormation : run.formation);
    if (other) board.opposite = boardName(index, !atEnd);
    for (const SetOutFace& face : faces_) {
      if (face.inward > outside && face.inward < inside)
        board.marks.push_back(
            {face.key, face.name, face.inward - outside, wall.at(end.s, face.inward)});
    }
    return board;
  }

  size_t runAtCorner(size_t wall, bool atEnd) const {
    size_t found = 0;
    for (size_t i = out_.foundations.size(); i-- > 0;) {
      if (out_.foundations[i].wall != wall) continue;
      found = i;
      if (atEnd) break;
    }
    return found;
  }

  std::string why(size_t wall, const LineEnds& ends) const {
    std::string text;
    for (const bool atEnd : {false, true}) {
      if (!(atEnd ? ends.noRoomAtEnd : ends.noRoomAtStart)) continue;
      const auto found = inTheWay(job_, out_, out_.walls[wall], atEnd, kReach);
      if (!text.empty()) text += "; ";
      text +=
          "beyond " + letter(wall, atEnd) + " there is no room for a board between the dig and ";
      text += found ? found->what + ", " + lengthText(found->away) + " from the corner"
                    : "the other boards";
    }
    return text;
  }

  OffsetPair offset(size_t index, const LineEnds& ends) const {
    const WallLine& wall = out_.walls[index];
    OffsetPair pair;
    pair.wall = index;
    pair.why = why(index, ends);
    if (!ends.offset) return pair;
    const OffsetLine& line = *ends.offset;
    pair.found = true;
    pair.out = line.out;
    for (size_t k = 0; k < 2; ++k) {
      const bool atEnd = k == 1;
      pair.stakes[k].name = wall.name + " offset at " + letter(index, atEnd);
      pair.stakes[k].beyond = atEnd ? line.s[k] - wall.length : -line.s[k];
      pair.stakes[k].at = wall.at(line.s[k], -line.out);
      pair.stakes[k].top = ground_.under(line.stakes[k]) + kOffsetStakeHeight;
    }
    for (const SetOutFace& face : faces_)
      pair.faces.push_back({face.key, face.name, line.out + face.inward});
    return pair;
  }

  const Job& job_;
  const SettingOut& out_;
  SettingOutGround ground_;
  std::vector<LineEnds> ends_;
  std::vector<SetOutFace> faces_;
  double top_ = 0;
};

}  // namespace

BoardPlan deriveBoards(const Job& job, const SettingOut& settingOut) {
  return BoardMaker(job, settingOut).make();
}

std::string offsetWords(double out) {
  return lengthText(std::abs(out)) + (out < 0 ? " inside" : " outside") + " the outer face";
}

}  // namespace model
