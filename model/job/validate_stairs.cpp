// Stairs: between two floors, inside the walls, clear of doors and of one another, and with a well
// that the floor over them has room for.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/job/hole_facts.h"
#include "model/job/job_names.h"
#include "model/job/nearest.h"
#include "model/job/stair_flight.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kSliver = 1e-4;      // square metres
constexpr double kLeastRoom = 0.500;  // before the foot and at the top: to turn at all
constexpr double kLeastRise = 0.100, kMostRise = 0.300;
constexpr double kOverRail = 0.100;   // left under a floor that a rail passes
constexpr double kSwings = 1.200;     // wider doors have two leaves
constexpr double kNearFloor = 0.500;  // of a door's sill, to open onto a floor

std::string pathOf(size_t index) { return "stair[" + std::to_string(index) + "]"; }

// To a tenth of a millimetre.
double toTenth(double metres) { return std::round(metres * 1e4) / 1e4; }

std::string quoted(const std::string& text) { return "\"" + text.substr(0, 60) + "\""; }

Regions one(const Polygon& polygon) {
  Polygon ring = polygon;
  if (signedArea(ring) < 0) std::reverse(ring.begin(), ring.end());
  return {{ring, {}}};
}

bool meet(const Polygon& a, const Polygon& b) { return area(intersect(one(a), one(b))) > kSliver; }

bool within(const Polygon& figure, const Polygon& room) {
  return area(subtract(one(figure), one(room))) < kSliver;
}

class StairCheck {
 public:
  StairCheck(const Validation& v, const PlanFacts& plan, const LevelFacts& levels, size_t index)
      : v_(v), plan_(plan), levels_(levels), index_(index), stair_(v.job.stairs[index]) {
    path_ = pathOf(index);
    who_ =
        stair_.name.empty() ? "stair " + std::to_string(index + 1) : "stair " + quoted(stair_.name);
  }

  // The flight, when nothing is wrong with it.
  std::optional<StairFlight> check() {
    if (!v_.known.hasAllOf(path_) || !floorsKnown() || !startsSomewhere()) return std::nullopt;
    if (!knownWall(v_, path_ + ".up", who_, stair_.up, plan_.corners())) return std::nullopt;
    const auto flight = stairFlight(v_.job, index_);
    if (!flight || !hasSteps(*flight) || !hasTrimming(*flight) || !fits(*flight) ||
        !clearAtSides(*flight) || !hasWell(*flight) || !clearOfDoors(*flight))
      return std::nullopt;
    return flight;
  }

 private:
  bool floorsKnown() const {
    const size_t count = v_.job.storeys.size();
    return count > 0 && v_.known.hasOfEach("storey", count, "name") &&
           v_.known.hasOfEach("storey", count, "floor") && v_.known.wallThickness() &&
           v_.known.hasAllOf("upper_floor") && v_.known.slabUnderside() &&
           (!v_.job.cellar || v_.known.hasAllOf("cellar"));
  }

  bool startsSomewhere() const {
    std::vector<std::string> floors;
    for (const Storey& storey : v_.job.storeys) floors.push_back(storey.name);
    const std::string last = floors.back();
    floors.pop_back();
    if (v_.job.cellar) floors.emplace_back(kCellarFloor);
    const std::string from = stair_.from.empty() ? v_.job.storeys[0].name : stair_.from;
    if (std::find(floors.begin(), floors.end(), from) != floors.end()) return true;
    const std::string path = path_ + ".from";
    if (from == last) {
      v_.error(path, who_ + " starts from " + quoted(last) + ", which has no floor over it",
               "add the storey that it lands on, or start it a floor lower");
      return false;
    }
    const auto near = nearest(from, floors);
    v_.error(path, who_ + ": there is no floor " + quoted(from),
             near ? "did you mean \"" + *near + "\"?"
                  : "name a storey that has another over it" +
                        std::string(v_.job.cellar ? ", or cellar" : ""));
    return false;
  }

  bool hasSteps(const StairFlight& flight) const {
    if (flight.rise >= kLeastRise && flight.rise <= kMostRise) return true;
    const double total = flight.toFloor - flight.fromFloor;
    v_.error(path_ + ".risers",
             who_ + ": " + std::to_string(flight.risers) + " risers over " + lengthWords(total) +
                 " are " + lengthWords(toTenth(flight.rise)) + " each",
             "about " + std::to_string(std::lround(total / 0.19)) + " would be " +
                 lengthWords(toTenth(total / double(std::lround(total / 0.19)))) +
                 "; the drawing decides");
    return false;
  }

  // The floor that it lands on: its joists are trimmed square to one another, and the guarding
  // stands under the rafters.
  bool hasTrimming(const StairFlight& flight) const {
    if (!flight.inTimber()) return true;
    size_t longest = 0;
    for (size_t i = 0; i < plan_.length.size(); ++i)
      if (plan_.length[i] > plan_.length[longest] + 1e-9) longest = i;
    const auto way = wayAlongWall(v_.job.outline, plan_.wallName(longest));
    const double askew =
        way ? std::min(std::abs(glm::dot(*way, flight.along)), std::abs(cross(*way, flight.along)))
            : 0;
    if (askew > 1e-3) {
      v_.error(
          path_ + ".up",
          who_ + " runs askew to the joists, which lie square to wall " + plan_.wallName(longest),
          "let it run along that wall or square to it; other wells are not trimmed here");
      return false;
    }
    if (v_.known.wallTop() && levels_.plateTop < flight.toFloor + flight.guard + 0.2) {
      v_.error(path_ + ".from",
               who_ + " lands on " + quoted(v_.job.storeys[flight.to].name) +
                   ", whose walls end at " + levelWords(levels_.wallTop),
               "floors in the roof have no stair here: make walls.top higher, or leave it out");
      return false;
    }
    return true;
  }

  bool fits(const StairFlight& flight) const {
    const double half = flight.half();
    const double beside = std::max(0.0, trimmingThick(v_.job, flight));
    const Polygon under = roomUnder(v_.job, flight, plan_.outline);
    const Polygon over = roomOver(v_.job, plan_.outline);
    const double foot = std::min(flight.front(), -kLeastRoom);
    if (!within(flight.rectangle(foot, flight.run(), -half, half), under)) {
      v_.error(
          path_ + ".foot",
          who_ + " does not fit inside the walls of the floor that it starts from: it is " +
              lengthWords(flight.run()) + " long and " + lengthWords(2 * half) +
              " wide over its strings",
          "and needs " + lengthWords(kLeastRoom) + " before its foot; move the foot, or turn it");
      return false;
    }
    const double low = flight.wellFrom - std::max(kNewel + 0.05, beside + 0.01);
    const double high = flight.wellTo + std::max(kLeastRoom, beside + 0.01);
    if (within(flight.rectangle(low, high, -half, half), over)) return true;
    v_.error(
        path_ + ".foot",
        who_ + ": its well, " + lengthWords(flight.wellTo - flight.wellFrom) +
            " long, does not fit inside the walls of the floor that it lands on",
        "with " + lengthWords(kLeastRoom) + " to stand on at the top; move the foot, or turn it");
    return false;
  }

  // Along a wall all the way, or clear of it all the way.
  bool clearAtSides(const StairFlight& flight) const {
    const Polygon under = roomUnder(v_.job, flight, plan_.outline);
    const Polygon over = roomOver(v_.job, plan_.outline);
    const double trimming = clearBesideWell(v_.job, flight);
    for (const int side : {-1, 1}) {
      const Beside low = besideFlight(flight, side, under);
      const Beside up = besideWell(v_.job, flight, side, over);
      if (low != Beside::Neither && up != Beside::Neither) continue;
      v_.error(path_ + ".foot",
               who_ + (side > 0 ? ": its left side" : ": its right side") +
                   " is neither along a wall nor clear of one all the way",
               "within " + lengthWords(kAtWall) + " of the wall all along, or " +
                   lengthWords(low == Beside::Neither ? kBesideGuard : trimming) +
                   " clear of it, for guarding" +
                   (flight.inTimber() ? " and the joist beside the well" : ""));
      return false;
    }
    return true;
  }

  bool hasWell(const StairFlight& flight) const {
    const double under = flight.floorUnderside - kOverRail - kNewelOver - flight.guard;
    const double low =
        flight.wellFrom > flight.front() ? flight.pitchLine(flight.front() + kNewel) : -1e9;
    if (flight.pitchLine(flight.wellFrom) <= under && low <= under) return true;
    v_.error(path_ + (stair_.well ? ".well" : ".risers"),
             who_ + ": its handrail would meet the floor over it, whose underside is at " +
                 levelWords(flight.floorUnderside),
             stair_.well
                 ? "make the well longer, or leave it out for headroom of " + lengthWords(kHeadroom)
                 : "the floors are too near one another");
    return false;
  }

  // What a door swings over inside, and what a stair takes up on that floor.
  bool clearOfDoors(const StairFlight& flight) const {
    const double half = flight.half();
    const Polygon foot = flight.rectangle(flight.front(), flight.run(), -half, half);
    const Polygon well = flight.well();
    const double turn = signedArea(v_.job.outline) < 0 ? -1 : 1;
    for (size_t wall = 0; wall < plan_.corners(); ++wall) {
      const Vec2 a = v_.job.outline[wall];
      const auto along = wayAlongWall(v_.job.outline, plan_.wallName(wall));
      if (!along) continue;
      const Vec2 inward = Vec2{-along->y, along->x} * turn;
      for (const HoleFacts& hole : knownHoles(v_, plan_, wall)) {
        if (hole.opening->kind != OpeningKind::Door) continue;
        const double width = hole.to - hole.from, leaf = width > kSwings ? width / 2 : width;
        const double face = v_.job.walls.total();
        const auto at = [&](double s, double in) { return a + *along * s + inward * in; };
        const Polygon swing{at(hole.from, face), at(hole.to, face), at(hole.to, face + leaf),
                            at(hole.from, face + leaf)};
        const bool low = !flight.fromCellar && std::abs(hole.sill - flight.fromFloor) < kNearFloor;
        const bool high = std::abs(hole.sill - flight.toFloor) < kNearFloor;
        if ((!low || !meet(swing, foot)) && (!high || !meet(swing, well))) continue;
        v_.error(path_ + ".foot", who_ + " is where " + hole.name + " may swing",
                 "keep " + lengthWords(leaf) + " clear inside it");
        return false;
      }
    }
    return true;
  }

  const Validation& v_;
  const PlanFacts& plan_;
  const LevelFacts& levels_;
  size_t index_;
  const Stair& stair_;
  std::string path_, who_;
};

// A well with its guarding is in the way of a flight that starts from the same floor.
bool inTheWay(const StairFlight& below, const StairFlight& above) {
  if (above.fromCellar || above.from != below.to) return false;
  const double half = below.half() + kBesideGuard;
  const Polygon well =
      below.rectangle(below.wellFrom - kBesideGuard, below.wellTo + kBesideGuard, -half, half);
  return meet(well, above.rectangle(above.front(), above.wellTo, -above.half(), above.half()));
}

void validatePair(const Validation& v, const StairFlight& a, const StairFlight& b) {
  const std::string path = pathOf(b.jobIndex), other = quoted(a.name);
  if (a.to == b.to) {
    v.error(path + ".from",
            "stair " + quoted(b.name) + " lands on the same floor as stair " + other,
            "one stair to each floor is drawn");
  } else if (inTheWay(a, b) || inTheWay(b, a)) {
    v.error(path + ".foot",
            "stair " + quoted(b.name) + " and stair " + other +
                " meet: one stands where the well of the other is, with its guarding",
            "move one of them; stairs over one another are not drawn");
  }
}

}  // namespace

void validateStairs(const Validation& v, const std::optional<PlanFacts>& plan,
                    const LevelFacts& levels) {
  if (!plan) return;
  std::vector<StairFlight> sound;
  for (size_t i = 0; i < v.job.stairs.size(); ++i) {
    const auto flight = StairCheck(v, *plan, levels, i).check();
    if (!flight) continue;
    for (const StairFlight& before : sound) validatePair(v, before, *flight);
    sound.push_back(*flight);
  }
}

}  // namespace model
