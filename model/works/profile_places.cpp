#include "model/works/profile_places.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/works/cellar_dig.h"
#include "model/works/ground_zones.h"

namespace model {

namespace {

// Canadian Wood-Frame House Construction (CMHC): boards at least 1.2 m past the edge of the dig.
constexpr double kClear = 1.200;
constexpr double kLeastClear = 0.150;
// Common practice, no source:
constexpr double kStake = 0.050, kRail = 0.025, kBeyondLines = 0.150;
constexpr double kBetweenBoards = 0.050, kPeg = 0.050;
constexpr double kFarthest = 40, kStep = 0.050;

Polygon anticlockwise(Polygon polygon) {
  if (signedArea(polygon) < 0) std::reverse(polygon.begin(), polygon.end());
  return polygon;
}

class Placer {
 public:
  Placer(const Job& job, const SettingOut& out) : job_(job), out_(out) {
    outer_ = out.faceDistances.outermost();
    inner_ = out.faceDistances.innermost();
    dig_ = digGrown(kLeastClear);
    clearOfDig_ = digGrown(kClear);
    for (const StandingBuilding& building : job.site.buildings) {
      if (building.kind != BuildingKind::Demolish)
        buildings_.push_back({anticlockwise(building.outline), {}});
    }
  }

  std::vector<LineEnds> place() {
    std::vector<LineEnds> ends(out_.walls.size());
    for (size_t i = 0; i < out_.walls.size(); ++i) {
      ends[i].atStart = find(out_.walls[i], false);
      ends[i].atEnd = find(out_.walls[i], true);
    }
    return ends;
  }

 private:
  Regions digGrown(double clear) const {
    Regions dug = grown(out_.outline, clear - outer_);
    if (job_.cellar) {
      const CellarDig dig = deriveCellarDig(job_, out_);
      dug = unite(dug, grown(out_.cellarOutline, dig.margin + dig.reach + clear));
    }
    return dug;
  }

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

  LineEnd pegAt(const WallLine& wall, bool atEnd, double away) const {
    LineEnd end;
    end.s = atEnd ? wall.length + away : -away;
    end.peg = true;
    end.board =
        rectangleOnPlan(wall.at(end.s, out_.faceDistances.innerFace / 2), wall.along, kPeg, kPeg);
    return end;
  }

  static bool meets(const Regions& regions, const Polygon& figure) {
    return std::any_of(regions.begin(), regions.end(), [&](const Region& r) {
      if (std::any_of(figure.begin(), figure.end(), [&](const Vec2& p) { return contains(r, p); }))
        return true;
      if (std::any_of(r.outer.begin(), r.outer.end(),
                      [&](const Vec2& p) { return contains(figure, p); }))
        return true;
      for (size_t i = 0; i < figure.size(); ++i) {
        const Vec2 a = figure[i], b = figure[(i + 1) % figure.size()];
        for (size_t j = 0; j < r.outer.size(); ++j) {
          const Vec2 c = r.outer[j], d = r.outer[(j + 1) % r.outer.size()];
          if (cross(b - a, c - a) * cross(b - a, d - a) < 0 &&
              cross(d - c, a - c) * cross(d - c, b - c) < 0)
            return true;
        }
      }
      return false;
    });
  }

  bool canStand(const Polygon& figure) const {
    return holds({{out_.terrain.boundary, {}}}, figure) && !meets(buildings_, figure) &&
           std::none_of(taken_.begin(), taken_.end(),
                        [&](const Polygon& other) { return overlapping(figure, other); });
  }

  // True when the lines themselves come to an end here: the boundary or a building.
  bool blocked(const WallLine& wall, bool atEnd, double away) const {
    const double s = atEnd ? wall.length + away : -away;
    const std::array<double, 2> offsets{outer_, inner_};
    return std::any_of(offsets.begin(), offsets.end(), [&](double inward) {
      const Vec2 p = wall.at(s, inward);
      if (!contains(out_.terrain.boundary, p)) return true;
      return std::any_of(buildings_.begin(), buildings_.end(),
                         [&](const Region& r) { return contains(r, p); });
    });
  }

  // Outward from the corner: the first place clear of the dig; if there is none before the lines
  // are blocked, the farthest that is at least out of the dig.
  std::optional<LineEnd> find(const WallLine& wall, bool atEnd) {
    std::optional<LineEnd> board, peg;
    for (double away = kStep; away < kFarthest && !blocked(wall, atEnd, away); away += kStep) {
      LineEnd candidate = boardAt(wall, atEnd, away);
      if (!meets(dig_, candidate.board) && canStand(candidate.board)) {
        const bool clear = !meets(clearOfDig_, candidate.board);
        board = std::move(candidate);
        if (clear) break;
      } else if (!board) {
        candidate = pegAt(wall, atEnd, away);
        if (!meets(dig_, candidate.board) && canStand(candidate.board)) peg = std::move(candidate);
      }
    }
    const std::optional<LineEnd>& found = board ? board : peg;
    if (found) {
      const Vec2 centre = (found->board[0] + found->board[2]) / 2.0;
      Polygon taken;
      for (const Vec2& p : found->board) {
        taken.push_back(p + glm::normalize(p - centre) * kBetweenBoards);
      }
      taken_.push_back(std::move(taken));
    }
    return found;
  }

  const Job& job_;
  const SettingOut& out_;
  double outer_ = 0, inner_ = 0;
  Regions dig_, clearOfDig_, buildings_;
  std::vector<Polygon> taken_;
};

}  // namespace

std::vector<LineEnds> placeProfiles(const Job& job, const SettingOut& settingOut) {
  return Placer(job, settingOut).place();
}

}  // namespace model
