#include "model/works/profile_places.h"

#include <algorithm>
#include <cmath>

#include "model/works/stake_room.h"

namespace model {

namespace {

// Common practice, no source:
constexpr double kStake = 0.050, kRail = 0.025, kBeyondLines = 0.150;
constexpr double kFarthest = 40, kStep = 0.050;
// Of an offset line: a stride from the wall at most, and its stakes' search along it.
constexpr std::array<double, 14> kOffsets{0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 0.4,
                                          0.6, 0.7, 0.8, 0.9, 1.2, 3.5, 4.0};
constexpr double kStakeReach = 4, kStakeStep = 0.500;

class Placer {
 public:
  Placer(const Job& job, const SettingOut& out) : out_(out), room_(job, out) {
    outer_ = out.faceDistances.outermost();
    inner_ = out.faceDistances.innermost();
  }

  std::vector<LineEnds> place() {
    std::vector<LineEnds> ends(out_.walls.size());
    for (size_t i = 0; i < out_.walls.size(); ++i) {
      ends[i].atStart = find(out_.walls[i], false);
      ends[i].atEnd = find(out_.walls[i], true);
    }
    for (size_t i = 0; i < out_.walls.size(); ++i) {
      LineEnds& each = ends[i];
      each.noRoomAtStart = !each.atStart;
      each.noRoomAtEnd = !each.atEnd;
      if (each.atStart && each.atEnd) continue;
      each.offset = findOffset(out_.walls[i]);
      // No string goes from one board to nothing.
      if (each.offset) each.atStart = each.atEnd = std::nullopt;
    }
    return ends;
  }

 private:
  // A board `away` metres beyond the corner, its stakes towards the building.
  LineEnd boardAt(const WallLine& wall, bool atEnd, double away) const {
    LineEnd end;
    const Vec2 along = wall.along * (atEnd ? 1.0 : -1.0);
    end.s = atEnd ? wall.length + away : -away;
    const double from = outer_ - kBeyondLines, to = inner_ + kBeyondLines;
    const Vec2 middle = wall.at(end.s, (from + to) / 2);
    const double length = to - from;
    const Vec2 across{-along.y, along.x};
    for (size_t k = 0; k < 2; ++k) {
      const double off = (length - kStake) / 2 * (k == 0 ? -1 : 1);
      end.stakes[k] = rectangleOnPlan(middle + across * off, along, kStake, kStake);
    }
    end.rail = rectangleOnPlan(middle + along * (kStake + kRail) / 2.0, along, kRail, length);
    end.board = rectangleOnPlan(middle + along * kRail / 2.0, along, kStake + kRail, length);
    return end;
  }

  // True when the lines themselves come to an end here: the boundary or a building.
  bool blocked(const WallLine& wall, bool atEnd, double away) const {
    const double s = atEnd ? wall.length + away : -away;
    return !room_.isOpen(wall.at(s, outer_)) || !room_.isOpen(wall.at(s, inner_));
  }

  // Outward from the corner: the first place clear of the dig; if there is none before the lines
  // are blocked, the farthest that is at least out of the dig.
  std::optional<LineEnd> find(const WallLine& wall, bool atEnd) {
    std::optional<LineEnd> found;
    for (double away = kStep; away < kFarthest && !blocked(wall, atEnd, away); away += kStep) {
      LineEnd candidate = boardAt(wall, atEnd, away);
      if (!room_.isOutOfDig(candidate.board) || !room_.canStand(candidate.board)) continue;
      const bool clear = room_.isClearOfDig(candidate.board);
      found = std::move(candidate);
      if (clear) break;
    }
    if (found) room_.take(found->board);
    return found;
  }

  Polygon stakeAt(const WallLine& wall, double s, double out) const {
    return rectangleOnPlan(wall.at(s, -out), wall.along, kStake, kStake);
  }

  // Beside the corner, else beyond it, else a little way back along the wall.
  std::optional<double> findStake(const WallLine& wall, bool atEnd, double out, bool clear) const {
    const auto stands = [&](double beyond) {
      const Polygon stake = stakeAt(wall, atEnd ? wall.length + beyond : -beyond, out);
      return (clear ? room_.isClearOfDig(stake) : room_.isOutOfDig(stake)) && room_.canStand(stake);
    };
    const auto place = [&](double beyond) { return atEnd ? wall.length + beyond : -beyond; };
    for (double beyond = 0; beyond <= kStakeReach; beyond += kStakeStep) {
      if (stands(beyond)) return place(beyond);
    }
    for (double back = kStakeStep; back < wall.length / 4; back += kStakeStep) {
      if (stands(-back)) return place(-back);
    }
    return std::nullopt;
  }

  // Clear of the dig before only out of it, outside before inside; a string that crosses a dig only
  // where no other can be pulled.
  std::optional<OffsetLine> findOffset(const WallLine& wall) {
    std::optional<OffsetLine> found, overDig;
    for (size_t k = 0; k < 4 * kOffsets.size() && !found; ++k) {
      const bool clear = k < 2 * kOffsets.size();
      const double side = (k / kOffsets.size()) % 2 == 0 ? 1.0 : -1.0;
      auto line = offsetAt(wall, side * kOffsets[k % kOffsets.size()], clear);
      if (!line) continue;
      const Vec2 a = wall.at(line->s[0], -line->out), b = wall.at(line->s[1], -line->out);
      const bool over =
          !room_.isOutOfDig(rectangleOnPlan((a + b) / 2.0, wall.along, line->s[1] - line->s[0], 0));
      if (!over) {
        found = std::move(line);
      } else if (!overDig) {
        overDig = std::move(line);
      }
    }
    if (!found) found = std::move(overDig);
    if (found) {
      for (const Polygon& stake : found->stakes) room_.take(stake);
    }
    return found;
  }

  std::optional<OffsetLine> offsetAt(const WallLine& wall, double out, bool clear) const {
    if (out < 0 && -out < inner_ + kStake) return std::nullopt;  // in the wall or its concrete
    const auto start = findStake(wall, false, out, clear);
    if (!start) return std::nullopt;
    const auto end = findStake(wall, true, out, clear);
    if (!end || !room_.isOpen(wall.at(*start, -out), wall.at(*end, -out))) return std::nullopt;
    return OffsetLine{out, {*start, *end}, {stakeAt(wall, *start, out), stakeAt(wall, *end, out)}};
  }

  const SettingOut& out_;
  StakeRoom room_;
  double outer_ = 0, inner_ = 0;
};

}  // namespace

std::vector<LineEnds> placeProfiles(const Job& job, const SettingOut& settingOut) {
  return Placer(job, settingOut).place();
}

std::optional<InTheWay> inTheWay(const Job& job, const SettingOut& settingOut, const WallLine& wall,
                                 bool atEnd, double reach) {
  const FaceDistances& faces = settingOut.faceDistances;
  const double sign = atEnd ? 1 : -1, corner = atEnd ? wall.length : 0;
  for (double away = kStep; away < reach; away += kStep) {
    for (const double inward : {faces.outermost(), faces.innermost()}) {
      const Vec2 p = wall.at(corner + sign * away, inward);
      for (const StandingBuilding& building : job.site.buildings) {
        if (building.kind != BuildingKind::Demolish && contains(building.outline, p))
          return InTheWay{building.name.empty() ? "a standing building" : building.name, away};
      }
      if (!contains(settingOut.terrain.boundary, p)) return InTheWay{"the boundary", away};
    }
  }
  return std::nullopt;
}

}  // namespace model
