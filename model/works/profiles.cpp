// Profile boards at both ends of every wall line, the strings between them, and corner pegs.
#include <algorithm>
#include <cmath>
#include <optional>

#include <glm/geometric.hpp>

#include "model/works/ground_zones.h"
#include "model/works/parts.h"
#include "model/works/profile_places.h"
#include "model/works/scaffold_plan.h"

namespace model {

namespace {

// Common practice, no source, but the clearance (see profile_places.cpp).
constexpr double kPeg = 0.050, kPegHeight = 0.150, kEndPegHeight = 0.300;
constexpr double kOverDampCourse = 0.300, kOverGround = 0.600;
constexpr double kOff = 0.002;  // clear of the ground

class ProfileBuilder {
 public:
  ProfileBuilder(const Job& job, const SettingOut& out, Works& works)
      : job_(job), out_(out), works_(works), strip_(strippedArea(job, out)) {
    // Boards go when the corners are up, or before a scaffold needs their ground.
    const bool early = [&] {
      const auto all = platforms(job, out);
      return !all.empty() && !out.lifts.empty() &&
             all.front().lift.storey == out.lifts.front().storey &&
             all.front().lift.number == out.lifts.front().number;
    }();
    boardsGo_ = early || out.lifts.empty()
                    ? whole({StageKind::DampCourse}, 0.95)
                    : whole({StageKind::RunIn, out.lifts[0].storey, out.lifts[0].number});
    stringsGo_ =
        early || out.lifts.empty()
            ? whole({StageKind::DampCourse}, 0.9)
            : whole({StageKind::RaiseCorners, out.lifts[0].storey, out.lifts[0].number}, 0.9);
    digStarts_ = whole({job.cellar ? StageKind::CellarDig : StageKind::TrenchDig});
  }

  void build() {
    const std::vector<LineEnds> ends = placeProfiles(job_, out_);
    double top = out_.levels.dampCourse + kOverDampCourse;
    for (const LineEnds& line : ends) {
      for (const auto& end : {line.atStart, line.atEnd}) {
        if (end) top = std::max(top, groundUnder(end->board) + kOverGround);
      }
    }
    top_ = top;
    for (size_t i = 0; i < out_.corners.size(); ++i) cornerPeg(i);
    for (size_t i = 0; i < ends.size(); ++i) {
      const std::string& wall = out_.walls[i].name;
      if (ends[i].atStart) board(wall, out_.walls[i].from, *ends[i].atStart);
      if (ends[i].atEnd) board(wall, out_.walls[i].to, *ends[i].atEnd);
      if (ends[i].atStart && ends[i].atEnd) strings(i, ends[i]);
    }
  }

 private:
  // The ground as it is then, at its highest under a figure.
  double groundUnder(const Polygon& figure) const {
    double high = -1e300;
    for (size_t i = 0; i < figure.size(); ++i) {
      const Vec2 a = figure[i], b = figure[(i + 1) % figure.size()];
      for (const double t : {0.0, 0.25, 0.5, 0.75}) {
        high = std::max(high, out_.terrain.levelAt(a + (b - a) * t));
      }
    }
    return (holds(strip_, figure) ? high - job_.ground.topsoil : high) + kOff;
  }

  Element element(const std::string& id, const std::string& name, ElementKind kind, Solid solid,
                  const Placement& removed) const {
    Element e;
    e.id = id;
    e.name = name;
    e.kind = kind;
    e.material = Material::Timber;
    e.solid = std::move(solid);
    e.quantity = {1, Unit::Each};
    e.placed = whole({StageKind::SettingOut}, kind == ElementKind::Peg ? 0 : 0.3);
    e.removed = removed;
    return e;
  }

  void cornerPeg(size_t corner) {
    const Polygon foot = rectangleOnPlan(out_.corners[corner].at, {1, 0}, kPeg, kPeg);
    const double ground = groundUnder(foot);
    const std::string& letter = out_.corners[corner].letter;
    add(works_, element("peg/corner " + letter, "Peg at corner " + letter, ElementKind::Peg,
                        prism(Region{foot, {}}, ground, ground + kPegHeight), digStarts_));
  }

  void board(const std::string& wall, size_t corner, const LineEnd& end) {
    const std::string at = "wall " + wall + "/" + out_.corners[corner].letter;
    if (end.peg) {
      const double ground = groundUnder(end.board);
      add(works_, element("peg/" + at, "Line peg, wall " + wall, ElementKind::Peg,
                          prism(Region{end.board, {}}, ground, ground + kEndPegHeight), boardsGo_));
      works_.elements.back().wall = wall;
      return;
    }
    Solid solid;
    for (const Polygon& stake : end.stakes) {
      solid.append(prism(Region{stake, {}}, groundUnder(stake), top_));
    }
    solid.append(prism(Region{end.rail, {}}, top_ - kRailDepth, top_));
    Element e =
        element("profile/" + at,
                "Profile board, wall " + wall + " beyond corner " + out_.corners[corner].letter,
                ElementKind::ProfileBoard, std::move(solid), boardsGo_);
    e.wall = wall;
    add(works_, std::move(e));
  }

  double lineLevel(const LineEnd& end) const {
    return end.peg ? groundUnder(end.board) + kEndPegHeight : top_;
  }

  void strings(size_t index, const LineEnds& ends) {
    const WallLine& wall = out_.walls[index];
    const WallFaces& faces = out_.faces[index];
    const auto pull = [&](const FaceLine& face, bool comesBack) {
      StringLine line;
      line.name = wall.name + " " + face.name;
      line.a = {wall.at(ends.atStart->s, face.inward), lineLevel(*ends.atStart)};
      line.b = {wall.at(ends.atEnd->s, face.inward), lineLevel(*ends.atEnd)};
      line.placed = whole({StageKind::SettingOut}, 0.6);
      line.removed = digStarts_;
      works_.strings.push_back(line);
      if (!comesBack) return;
      line.placed = whole({StageKind::LinesBack});
      line.removed = stringsGo_;
      works_.strings.push_back(line);
    };
    pull(faces.outerFace, true);
    pull(faces.innerFace, true);
    pull(faces.foundationOuter, false);
    pull(faces.foundationInner, false);
  }

  const Job& job_;
  const SettingOut& out_;
  Works& works_;
  Regions strip_;
  Placement boardsGo_, stringsGo_, digStarts_;
  double top_ = 0;
};

}  // namespace

void buildProfiles(const Job& job, const SettingOut& settingOut, Works& works) {
  ProfileBuilder(job, settingOut, works).build();
}

}  // namespace model
