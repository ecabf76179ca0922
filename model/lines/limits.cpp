#include "model/lines/limits.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "model/lines/wall_runs.h"
#include "model/settingout/offsets.h"

namespace model {

namespace {

struct Reach {
  double distance = 1e300;
  Vec2 from{0, 0}, at{0, 0};
  std::string to;
};

void keepNearer(Reach& best, const Reach& other) {
  if (other.distance < best.distance - 1e-9) best = other;
}

class LimitTester {
 public:
  LimitTester(const Job& job, const SettingOut& out)
      : job_(job),
        out_(out),
        face_(out.ring(out.faceDistances.finishedFace)),
        concrete_(out.ring(out.faceDistances.foundationOuter)) {}

  LimitTest distanceTest(LimitKind kind, const std::optional<size_t>& wall,
                         const std::string& building = {}) const {
    const auto nearest = [&](const Polygon& ring) {
      return kind == LimitKind::Boundary ? toBoundary(ring, wall)
                                         : toBuildings(ring, wall, building);
    };
    const Reach reach = nearest(face_);
    LimitTest test;
    test.kind = kind;
    test.what = (wall ? "wall " + out_.walls[*wall].name : "walls") + " to " +
                (reach.to.empty() ? "the boundary" : reach.to);
    test.found = reach.distance;
    test.from = reach.from;
    test.at = reach.at;
    const double eaves = nearest(out_.eavesOutline).distance;
    const double foundation = nearest(concrete_).distance;
    if (eaves < reach.distance - 1e-6) test.further = "eaves " + signedText(eaves);
    if (foundation < reach.distance - 1e-6)
      test.further += (test.further.empty() ? "" : ", ") + ("foundation " + signedText(foundation));
    return test;
  }

  LimitTest levelTest(LimitKind kind) const {
    LimitTest test;
    test.kind = kind;
    test.what = kind == LimitKind::Ridge ? "ridge" : "eaves";
    test.found = kind == LimitKind::Ridge ? out_.levels.ridge : out_.levels.eaves;
    return test;
  }

  LimitTest given(size_t index) const {
    const Limit& limit = job_.limits[index];
    const bool level = limit.kind == LimitKind::Ridge || limit.kind == LimitKind::Eaves;
    LimitTest test = level ? levelTest(limit.kind) : distanceTest(limit.kind, wallOf(limit));
    test.given = index;
    test.note = limit.note;
    const auto& allowed = level ? limit.most : limit.least;
    if (!allowed || (!level && test.found > 1e299)) return test;
    test.allowed = *allowed;
    test.spare = level ? *allowed - test.found : test.found - *allowed;
    // To the micrometre, so that 1000 asked and 1000 drawn is not over by a binary digit.
    test.spare = std::round(test.spare * 1e6) / 1e6;
    test.verdict = test.spare < 0                 ? LimitVerdict::Over
                   : test.spare < kNothingToSpare ? LimitVerdict::AtTheLimit
                                                  : LimitVerdict::Clear;
    test.words = wordsOf(test);
    return test;
  }

 private:
  static std::string signedText(double distance) {
    return distance < 0 ? lengthText(-distance) + " beyond it" : lengthText(distance);
  }

  static std::string wordsOf(const LimitTest& test) {
    if (test.verdict == LimitVerdict::Clear) return "clear by " + lengthText(test.spare);
    if (test.verdict == LimitVerdict::AtTheLimit)
      return "at the limit: " + lengthText(test.spare) + " to spare";
    // Over by less than reads as a millimetre is still over.
    return "over by " + (test.spare > -0.0005 ? "less than 1" : lengthText(-test.spare));
  }

  std::optional<size_t> wallOf(const Limit& limit) const {
    return limit.wall.empty() ? std::nullopt : out_.wallNamed(limit.wall);
  }

  // Of one wall what is ahead of it, of all walls whatever is nearest.
  Reach toBoundary(const Polygon& ring, const std::optional<size_t>& wall) const {
    const Outline& boundary = job_.site.boundary;
    Reach best;
    if (boundary.empty()) return best;
    if (wall) keepNearer(best, reachOf(model::toBoundary(job_, out_, *wall, ring)));
    Reach beyond;
    for (size_t i = 0; i < out_.walls.size(); ++i) {
      if (wall && *wall != i) continue;
      const Vec2 a = ring[out_.walls[i].from], b = ring[out_.walls[i].to];
      for (size_t k = 0; !wall && k < boundary.size(); ++k) {
        const SiteOffset d =
            shortestBetween({a, b}, {boundary[k], boundary[(k + 1) % boundary.size()]});
        keepNearer(best, {d.distance, d.from, d.at, "boundary " + std::to_string(k + 1)});
      }
      for (const Vec2& p : {a, b}) {
        if (!contains(boundary, p))
          keepNearer(beyond, {-distanceToOutline(boundary, p), p, p, best.to});
      }
    }
    return beyond.distance < 0 ? beyond : best;
  }

  Reach toBuildings(const Polygon& ring, const std::optional<size_t>& wall,
                    const std::string& only) const {
    Reach best;
    best.to = "other buildings";
    for (const StandingBuilding& building : job_.site.buildings) {
      if (building.kind == BuildingKind::Demolish || building.outline.empty()) continue;
      if (!only.empty() && building.name != only) continue;
      if (wall) {
        keepNearer(best, reachOf(toBuilding(out_, *wall, ring, building)));
        continue;
      }
      const SiteOffset d = shortestBetween(ring, building.outline);
      keepNearer(best, {d.distance, d.from, d.at,
                        building.name.empty() ? "a standing building" : building.name});
    }
    return best;
  }

  static Reach reachOf(const std::optional<LineToSite>& to) {
    if (!to) return {};
    return {to->nearest.distance, to->nearest.from, to->nearest.at, to->to};
  }

  const Job& job_;
  const SettingOut& out_;
  Polygon face_, concrete_;
};

}  // namespace

std::vector<LimitTest> deriveLimits(const Job& job, const SettingOut& settingOut) {
  const LimitTester tester(job, settingOut);
  std::vector<LimitTest> tests;
  for (size_t i = 0; i < job.limits.size(); ++i) tests.push_back(tester.given(i));
  const auto limited = [&](LimitKind kind, const std::string& to) {
    return std::any_of(tests.begin(), tests.end(), [&](const LimitTest& test) {
      return test.given && test.kind == kind && job.limits[*test.given].wall.empty() &&
             (to.empty() || test.what == "walls to " + to);
    });
  };
  if (!job.site.boundary.empty() && !limited(LimitKind::Boundary, ""))
    tests.push_back(tester.distanceTest(LimitKind::Boundary, std::nullopt));
  for (const StandingBuilding& building : job.site.buildings) {
    if (building.kind == BuildingKind::Demolish || building.outline.empty()) continue;
    if (!limited(LimitKind::Building, building.name))
      tests.push_back(tester.distanceTest(LimitKind::Building, std::nullopt, building.name));
  }
  for (const LimitKind kind : {LimitKind::Ridge, LimitKind::Eaves}) {
    if (!limited(kind, "")) tests.push_back(tester.levelTest(kind));
  }
  return tests;
}

const char* shapeOf(LimitVerdict verdict) {
  switch (verdict) {
    case LimitVerdict::Clear:
      return "○ clear";
    case LimitVerdict::AtTheLimit:
      return "◇ at the limit";
    case LimitVerdict::Over:
      return "▲ over";
    case LimitVerdict::Told:
      break;
  }
  return "";
}

}  // namespace model
