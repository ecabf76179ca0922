#include "model/lines/level_sights.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/levelling/level_book.h"
#include "model/levelling/staff_text.h"
#include "model/lines/stands_on.h"

namespace model {

namespace {

constexpr double kSame = 5e-4;

bool begins(const std::string& text, const char* with) { return text.rfind(with, 0) == 0; }

// A staff is read to the millimetre, so what it should show is told so.
double toMillimetre(double metres) { return std::round(metres * 1000) / 1000; }

Vec2 nearestOn(const Vec2& a, const Vec2& b, const Vec2& p) {
  const Vec2 along = b - a;
  const double length = glm::dot(along, along);
  if (length == 0) return a;
  return a + along * std::clamp(glm::dot(p - a, along) / length, 0.0, 1.0);
}

// The nearest of the places where the staff may be held.
class Nearest {
 public:
  explicit Nearest(const Vec2& from) : from_(from) {}

  void segment(const Vec2& a, const Vec2& b) {
    const Vec2 p = nearestOn(a, b, from_);
    const double away = glm::distance(p, from_);
    if (away >= away_) return;
    away_ = away;
    at_ = p;
  }
  void ring(const Polygon& ring) {
    for (size_t i = 0; i < ring.size(); ++i) segment(ring[i], ring[(i + 1) % ring.size()]);
  }
  bool found() const { return away_ < kFar; }
  const Vec2& at() const { return at_; }

 private:
  static constexpr double kFar = 1e9;
  Vec2 from_, at_{0, 0};
  double away_ = kFar;
};

bool isCellar(const ScheduledLevel& line) {
  return begins(line.key, "cellar-") && line.key != "cellar-wall-top";
}

class Sights {
 public:
  Sights(const Job& job, const SettingOut& out, const SetUp& setUp, const Instrument& instrument)
      : job_(job),
        out_(out),
        setUp_(setUp),
        instrument_(instrument),
        floor_(floorOf(job, out, setUp)),
        inside_(floorArea(job, out, setUp)) {
    // The dig's bottom reaches past the walls by the toe and the working space.
    if (job.cellar)
      dig_ = offsetMitred(out.cellarOutline,
                          -(job.cellar->membrane + std::max(job.ground.workingSpace, 0.0)));
  }

  LevelSight of(const ScheduledLevel& line) const {
    return of(placeOf(line), toMillimetre(line.level), isCellar(line));
  }
  LevelSight of(const Vec3& point) const {
    const Vec2 at(point);
    const double level = toMillimetre(point.z);
    return of(at, level, contains(dig_, at) && level < toMillimetre(out_.terrain.levelAt(at)));
  }

 private:
  LevelSight of(const Vec2& at, double level, bool dug) const {
    LevelSight sight;
    sight.at = at;
    const auto ground = [&](const Vec2& p) {
      const bool here = glm::distance(p, sight.at) < kSame || (dug && contains(dig_, p));
      const double open = openGround(p);
      return here ? std::min(open, level) : open;
    };
    sight.reading = readStaff(instrument_, level, ground(sight.at));
    if (sight.reading.reach == Reach::Upright) return sight;
    sight.words.push_back(staffReadingText(instrument_, sight.reading));
    if (sight.reading.canBeRead()) return sight;
    sight.carry = carryLevel(instrument_, setUp_.at, sight.at, level, ground);
    for (CarryStep& step : sight.carry.steps) step.onFloor = onFloor(step.changePoint);
    const std::string other = otherSetUp(level, ground(sight.at));
    if (sight.carry.reached || other.empty())
      for (std::string& text : carryTexts(sight.carry, level))
        sight.words.push_back(std::move(text));
    if (!other.empty()) sight.words.push_back(other);
    return sight;
  }

  // The floor that the instrument stands on goes to the walls; beyond them, and without one, there
  // is the ground.
  bool onFloor(const Vec2& p) const { return floor_ && contains(inside_, p); }
  double openGround(const Vec2& p) const {
    return toMillimetre(onFloor(p) ? *floor_ : out_.terrain.levelAt(p));
  }

  Vec2 placeOf(const ScheduledLevel& line) const {
    Nearest nearest(setUp_.at);
    if (begins(line.key, "head:") || begins(line.key, "sill:")) {
      for (const BuiltOpening& opening : out_.openings)
        if (std::fabs((begins(line.key, "head:") ? opening.head : opening.sill) - line.level) <
            kSame)
          nearest.segment(out_.walls[opening.wall].at(opening.s0),
                          out_.walls[opening.wall].at(opening.s1));
    } else if (isCellar(line)) {
      nearest.ring(out_.cellarOutline);
    } else {
      runsAt(line, nearest);
    }
    if (!nearest.found()) nearest.ring(out_.outline);
    return nearest.at();
  }

  // The lengths of wall whose concrete has the level.
  void runsAt(const ScheduledLevel& line, Nearest& nearest) const {
    const bool top = begins(line.key, "top-of-concrete"), formation = begins(line.key, "formation"),
               blinding = begins(line.key, "blinding"), cellar = line.key == "cellar-wall-top";
    for (const FoundationRun& run : out_.foundations) {
      const auto is = [&](double level) {
        return !run.onCellar && std::fabs(level - line.level) < kSame;
      };
      if ((top && is(run.top)) || (formation && is(run.formation)) ||
          (blinding && is(run.underside)) || (cellar && run.onCellar))
        nearest.segment(out_.walls[run.wall].at(run.from), out_.walls[run.wall].at(run.to));
    }
  }

  // The job's first set-up from which the level is read as usual, in words.
  std::string otherSetUp(double level, double ground) const {
    for (const SetUp& setUp : job_.setUps) {
      if (sameName(setUp.name, setUp_.name)) continue;
      const auto instrument = instrumentOf(job_, setUp);
      if (!instrument) continue;
      const StaffReading sight = readStaff(*instrument, level, ground);
      if (sight.reach == Reach::Upright)
        return "set-up " + setUp.name + " reads it: " + staffText(sight.reading);
    }
    return {};
  }

  const Job& job_;
  const SettingOut& out_;
  const SetUp& setUp_;
  Instrument instrument_;
  std::optional<double> floor_;
  Polygon dig_, inside_;
};

template <typename Point>
std::vector<LevelSight> sightsOf(const Job& job, const SettingOut& out, const SetUp& setUp,
                                 const std::vector<Point>& points) {
  std::vector<LevelSight> sights;
  const auto instrument = instrumentOf(job, setUp);
  if (!instrument) return sights;
  const Sights all(job, out, setUp, *instrument);
  for (const Point& point : points) sights.push_back(all.of(point));
  return sights;
}

}  // namespace

std::vector<LevelSight> sightsOfLevels(const Job& job, const SettingOut& out, const SetUp& setUp) {
  return sightsOf(job, out, setUp, out.schedule);
}

std::vector<LevelSight> sightsOfPoints(const Job& job, const SettingOut& out, const SetUp& setUp,
                                       const std::vector<Vec3>& points) {
  return sightsOf(job, out, setUp, points);
}

std::optional<LevelSight> sightOfPoint(const Job& job, const SettingOut& out, const SetUp& setUp,
                                       const Vec3& point) {
  std::vector<LevelSight> sights = sightsOfPoints(job, out, setUp, {point});
  if (sights.empty()) return std::nullopt;
  return std::move(sights.front());
}

}  // namespace model
