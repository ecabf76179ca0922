// Straight flights of timber: strings, treads and risers, newels and guarding, the guarding round
// the well, and the boards that lie over the well until the stair is in.
#include <algorithm>
#include <cmath>

#include "model/works/parts.h"
#include "model/works/stair_parts.h"
#include "model/works/stair_well.h"

namespace model {

namespace {

// Common practice, no source.
constexpr double kUnderSteps = 0.020;                      // of a string, under treads and risers
constexpr double kRailWide = 0.050, kRailDeep = 0.060;     // upright
constexpr double kOpenGap = 0.095;                         // under an open tread, over its bar
constexpr double kBoardWide = 0.225, kBoardThick = 0.038;  // over the well
constexpr double kBoardGap = 0.004, kBearer = 0.050;
constexpr double kWallRail = 0.040;  // clear between a rail and its wall

// The shares of the stage: strings, then steps, then what is held on to.
constexpr double kSteps = 0.25, kGuards = 0.7;
// When in the floor's own stage boards go over the well.
constexpr double kBoarded = 0.99;

class StairBuilder {
 public:
  StairBuilder(const Job& job, const SettingOut& out, const StairFlight& flight, Works& works)
      : job_(job),
        flight_(flight),
        works_(works),
        open_(job.stairs[flight.jobIndex].riserKind == RiserKind::Open) {
    const Polygon under = roomUnder(job, flight, out.outline), over = roomOver(job, out.outline);
    for (const int side : {-1, 1}) {
      foot_[side > 0] = besideFlight(flight, side, under) == Beside::Room;
      top_[side > 0] = besideWell(job, flight, side, over) == Beside::Room;
    }
    name_ = flight.name.empty() ? "Stair" : flight.name;
    id_ = "stair/" + job.storeys[flight.to].name;  // one lands on each
    stage_ = {StageKind::Stairs, static_cast<int>(flight.to)};
  }

  void build() {
    cover();
    strings();
    steps();
    for (const int side : {-1, 1}) {
      if (foot_[side > 0]) guardFlight(side);
      if (top_[side > 0]) guardWell(side);
    }
    if (!foot_[0] && !foot_[1]) wallRail();
    guardEnd();
  }

 private:
  struct Part {
    std::string id, name;
    ElementKind kind;
    Quantity quantity;
    double begin;
  };

  void put(const Part& part, Solid solid) {
    Element e;
    e.id = id_ + "/" + part.id;
    e.name = name_ + ", " + part.name;
    e.kind = part.kind;
    e.material = Material::Timber;
    e.solid = std::move(solid);
    e.quantity = part.quantity;
    e.placed = whole(stage_, part.begin);
    add(works_, std::move(e));
  }

  static const char* sideName(int side) { return side > 0 ? "left" : "right"; }

  double onSlope(double length) const {
    return length * std::sqrt(1 + flight_.slope() * flight_.slope());
  }

  // z - slope * s along the edges of the strings.
  double stringTop() const { return flight_.pitchLine(0) + onSlope(kStringOver); }
  double stringUnder() const {
    return flight_.fromFloor - flight_.slope() * kRiserThick - kTreadThick - kUnderSteps;
  }

  void strings() {
    const double m = flight_.slope(), far = 100;
    SideFigure figure{{-far, -far}, {far, -far}, {far, far}, {-far, far}};
    figure = cutFigure(figure, {-m, 1}, stringTop());
    figure = cutFigure(figure, {m, -1}, -stringUnder());
    figure = cutFigure(figure, {-1, 0}, kNosing);
    figure = cutFigure(figure, {1, 0}, flight_.wellTo);
    figure = cutFigure(figure, {0, -1}, -flight_.stands);
    figure = cutFigure(figure, {0, 1}, flight_.toFloor);
    const double length = onSlope(flight_.wellTo + kNosing), w = flight_.width / 2;
    for (const int side : {-1, 1}) {
      const double q0 = side > 0 ? w : -flight_.half(), q1 = side > 0 ? flight_.half() : -w;
      put({std::string(sideName(side)) + " string",
           std::string(sideName(side)) + " string",
           ElementKind::StairString,
           {length, Unit::Metre},
           side > 0 ? 0 : kSteps / 2},
          drawnAcross(flight_, figure, q0, q1));
    }
  }

  void steps() {
    const double w = flight_.width / 2;
    for (int i = 0; i < flight_.risers; ++i) {
      const std::string number = std::to_string(i + 1);
      const double begin = kSteps + (kGuards - kSteps) * i / flight_.risers;
      const double face = i * flight_.going, top = flight_.fromFloor + (i + 1) * flight_.rise;
      const double under = top - kTreadThick;
      // Each riser goes down behind the tread under it.
      double foot = i == 0 ? flight_.stands : top - flight_.rise - kTreadThick;
      if (open_) foot = std::max(foot, top - flight_.rise + kOpenGap);
      if (foot < under - 1e-3)
        put({"riser " + number,
             (open_ ? "bar " : "riser ") + number,
             ElementKind::StairRiser,
             {1, Unit::Each},
             begin},
            stairBlock(flight_, {face, face + kRiserThick}, {-w, w}, {foot, under}));
      const bool last = i + 1 == flight_.risers;
      const double back = last ? flight_.wellTo : face + flight_.going;
      put({last ? "top nosing" : "tread " + number, last ? "top nosing" : "tread " + number,
           ElementKind::StairTread,
           last ? Quantity{flight_.width, Unit::Metre} : Quantity{1, Unit::Each}, begin},
          stairBlock(flight_, {face - kNosing, back}, {-w, w}, {under, top}));
    }
  }

  // A rail parallel to the flight, and its underside at s.
  SideFigure slopedRail(double from, double to) const {
    const double a = flight_.pitchLine(from) + flight_.guard;
    const double b = flight_.pitchLine(to) + flight_.guard;
    return {{from, a - kRailDeep}, {to, b - kRailDeep}, {to, b}, {from, a}};
  }

  void post(const std::string& what, const Vec2& s, const Vec2& q, double foot, double top) {
    put({"newel " + what, "newel " + what, ElementKind::Newel, {top - foot, Unit::Metre}, kGuards},
        stairBlock(flight_, s, q, {foot, top}));
  }

  void rail(const std::string& what, const SideFigure& figure, const Vec2& q, double length) {
    put({"handrail " + what, "handrail " + what, ElementKind::Handrail, {length, Unit::Metre}, 0.8},
        drawnAcross(flight_, figure, q.x, q.y));
  }

  void fill(const std::string& what, const Solid& solid, size_t count) {
    put({"balusters " + what,
         "balusters " + what,
         ElementKind::Baluster,
         {static_cast<double>(count), Unit::Each},
         0.9},
        solid);
  }

  static Vec2 mirrored(int side, double from, double to) {
    return side > 0 ? Vec2{from, to} : Vec2{-to, -from};
  }

  // Along the open side of the flight, on its string.
  void guardFlight(int side) {
    const std::string what = std::string("of the flight, ") + sideName(side);
    const double w = flight_.width / 2, middle = w + kStringThick / 2;
    const double from = -kNosing, to = flight_.wellTo;
    post(what, {flight_.front(), from}, mirrored(side, middle - kNewel / 2, middle + kNewel / 2),
         flight_.stands, flight_.pitchLine(from) + flight_.guard + kNewelOver);
    rail(what, slopedRail(from, to), mirrored(side, flight_.half() - kRailWide, flight_.half()),
         onSlope(to - from));
    Solid solid;
    const auto middles = balustersBetween(from, to);
    for (const double at : middles) {
      const double a = at - kBaluster / 2, b = at + kBaluster / 2;
      const double low = stringTop() + flight_.slope() * a,
                   high = stringTop() + flight_.slope() * b;
      const bool level = high > flight_.toFloor;  // the string is cut off level at the top
      const double underRail = flight_.guard - kRailDeep;
      solid.append(drawnAcross(flight_,
                               {{a, level ? flight_.toFloor : low},
                                {b, level ? flight_.toFloor : high},
                                {b, flight_.pitchLine(b) + underRail},
                                {a, flight_.pitchLine(a) + underRail}},
                               mirrored(side, w, w + kBaluster).x,
                               mirrored(side, w, w + kBaluster).y));
    }
    fill(what, solid, middles.size());
  }

  double railTop() const { return flight_.toFloor + flight_.guard; }

  // Beside the well on the floor above, from the newel at its low end to that at the top.
  void guardWell(int side) {
    const std::string what = std::string("round the well, ") + sideName(side);
    const double from = flight_.wellFrom, to = flight_.wellTo, half = flight_.half();
    post(what + ", at the top", {to, to + kNewel},
         mirrored(side, half - kNewel / 2, half + kNewel / 2), flight_.lands,
         std::max(railTop(), flight_.pitchLine(to) + flight_.guard) + kNewelOver);
    post(what + ", at the end", {from - kNewel, from}, mirrored(side, half, half + kNewel),
         flight_.lands, railTop() + kNewelOver);
    const double middle = half + kNewel / 2;
    const double top = railTop(), under = top - kRailDeep;
    rail(what, {{from, under}, {to, under}, {to, top}, {from, top}},
         mirrored(side, middle - kRailWide / 2, middle + kRailWide / 2), to - from);
    Solid solid;
    const auto middles = balustersBetween(from, to);
    for (const double at : middles)
      solid.append(stairBlock(flight_, {at - kBaluster / 2, at + kBaluster / 2},
                              mirrored(side, middle - kBaluster / 2, middle + kBaluster / 2),
                              {flight_.lands, under}));
    fill(what, solid, middles.size());
  }

  // Across the low end of the well.
  void guardEnd() {
    const std::string what = "across the well";
    const double middle = flight_.wellFrom - kNewel / 2, half = flight_.half();
    const double top = railTop(), under = top - kRailDeep;
    rail(what,
         {{middle - kRailWide / 2, under},
          {middle + kRailWide / 2, under},
          {middle + kRailWide / 2, top},
          {middle - kRailWide / 2, top}},
         {-half, half}, 2 * half);
    Solid solid;
    const auto middles = balustersBetween(-half, half);
    for (const double at : middles)
      solid.append(stairBlock(flight_, {middle - kBaluster / 2, middle + kBaluster / 2},
                              {at - kBaluster / 2, at + kBaluster / 2}, {flight_.lands, under}));
    fill(what, solid, middles.size());
  }

  // Between two walls a rail on brackets, on the right as one goes up.
  void wallRail() {
    const double q = -flight_.width / 2 + kWallRail;
    rail("on the wall", slopedRail(0, flight_.run()), {q, q + kRailWide}, onSlope(flight_.run()));
  }

  // Boards on bearers inside the hole, flush with the floor.
  void cover() {
    const double half = flight_.half(), from = flight_.wellFrom, to = flight_.wellTo;
    const double top = flight_.inTimber() ? flight_.lands : structuralGround();
    const int boards = std::max(1, static_cast<int>(std::lround((to - from) / kBoardWide)));
    const double wide = (to - from) / boards;
    Solid solid;
    for (int i = 0; i < boards; ++i)
      solid.append(stairBlock(flight_, {from + i * wide, from + (i + 1) * wide - kBoardGap},
                              {-half, half}, {top - kBoardThick, top}));
    for (const int side : {-1, 1})
      solid.append(stairBlock(flight_, {from, to}, mirrored(side, half - kBearer, half),
                              {top - kBoardThick - kBearer, top - kBoardThick}));
    Element e;
    e.id = id_ + "/boards over the well";
    e.name = name_ + ", boards over the well";
    e.kind = ElementKind::WellCover;
    e.material = Material::Timber;
    e.solid = std::move(solid);
    e.quantity = {(to - from) * 2 * half, Unit::SquareMetre};
    e.placed =
        whole(flight_.inTimber() ? StageKey{StageKind::UpperFloor, static_cast<int>(flight_.to)}
                                 : StageKey{StageKind::FloorOverCellar},
              kBoarded);
    e.removed = whole(stage_);
    add(works_, std::move(e));
  }

  double structuralGround() const {
    return job_.storeys[0].floor - job_.groundFloor.screed - job_.groundFloor.insulation;
  }

  const Job& job_;
  const StairFlight& flight_;
  Works& works_;
  bool open_ = false;
  bool foot_[2] = {false, false}, top_[2] = {false, false};  // right, left: guarded
  std::string name_, id_;
  StageKey stage_;
};

}  // namespace

void buildStairs(const Job& job, const SettingOut& settingOut, Works& works) {
  for (const StairFlight& flight : settingOut.stairs)
    StairBuilder(job, settingOut, flight, works).build();
}

}  // namespace model
