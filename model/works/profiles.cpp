// Profile boards at both ends of every wall line and the strings between them, offset lines where
// boards have no room, and corner pegs.
#include <algorithm>
#include <cmath>
#include <optional>

#include <glm/geometric.hpp>

#include "model/works/parts.h"
#include "model/works/profile_levels.h"
#include "model/works/profile_places.h"
#include "model/works/scaffold_plan.h"

namespace model {

namespace {

// Common practice, no source.
constexpr double kPeg = 0.050, kPegHeight = 0.150;

class ProfileBuilder {
 public:
  ProfileBuilder(const Job& job, const SettingOut& out, Works& works)
      : job_(job), out_(out), works_(works), ground_(job, out) {
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
    top_ = profileTop(out_, ground_, ends);
    for (size_t i = 0; i < out_.corners.size(); ++i) cornerPeg(i);
    for (size_t i = 0; i < ends.size(); ++i) {
      const std::string& wall = out_.walls[i].name;
      if (ends[i].atStart) board(wall, out_.walls[i].from, *ends[i].atStart);
      if (ends[i].atEnd) board(wall, out_.walls[i].to, *ends[i].atEnd);
      if (ends[i].atStart && ends[i].atEnd) strings(i, ends[i]);
      if (ends[i].offset) offsetLine(out_.walls[i], *ends[i].offset);
    }
  }

 private:
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
    // On a building that stays the corner is marked on its wall.
    for (const StandingBuilding& building : job_.site.buildings) {
      Polygon outline = building.outline;
      if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
      if (building.kind != BuildingKind::Demolish &&
          !intersect({{foot, {}}}, {{outline, {}}}).empty())
        return;
    }
    const double ground = ground_.under(foot);
    const std::string& letter = out_.corners[corner].letter;
    add(works_, element("peg/corner " + letter, "Peg at corner " + letter, ElementKind::Peg,
                        prism(Region{foot, {}}, ground, ground + kPegHeight), digStarts_));
  }

  void board(const std::string& wall, size_t corner, const LineEnd& end) {
    const std::string at = "wall " + wall + "/" + out_.corners[corner].letter;
    Solid solid;
    for (const Polygon& stake : end.stakes) {
      solid.append(prism(Region{stake, {}}, ground_.under(stake), top_));
    }
    solid.append(prism(Region{end.rail, {}}, top_ - kRailDepth, top_));
    Element e =
        element("profile/" + at,
                "Profile board, wall " + wall + " beyond corner " + out_.corners[corner].letter,
                ElementKind::ProfileBoard, std::move(solid), boardsGo_);
    e.wall = wall;
    add(works_, std::move(e));
  }

  void offsetLine(const WallLine& wall, const OffsetLine& offset) {
    StringLine line;
    line.name = wall.name + " offset line";
    line.placed = whole({StageKind::SettingOut}, 0.6);
    line.removed = boardsGo_;
    for (size_t k = 0; k < 2; ++k) {
      const std::string& letter = out_.corners[k == 0 ? wall.from : wall.to].letter;
      const double ground = ground_.under(offset.stakes[k]);
      const double top = ground + kOffsetStakeHeight;
      Element e =
          element("offset stake/wall " + wall.name + "/" + letter,
                  "Offset stake, wall " + wall.name + " at corner " + letter, ElementKind::Peg,
                  prism(Region{offset.stakes[k], {}}, ground, top), boardsGo_);
      e.wall = wall.name;
      add(works_, std::move(e));
      Vec3& end = k == 0 ? line.a : line.b;
      end = Vec3{wall.at(offset.s[k], -offset.out), top};
    }
    works_.strings.push_back(line);
  }

  void strings(size_t index, const LineEnds& ends) {
    const WallLine& wall = out_.walls[index];
    const WallFaces& faces = out_.faces[index];
    const auto pull = [&](const FaceLine& face, bool comesBack) {
      StringLine line;
      line.name = wall.name + " " + face.name;
      line.a = {wall.at(ends.atStart->s, face.inward), top_};
      line.b = {wall.at(ends.atEnd->s, face.inward), top_};
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
    // A wall that stands on the cellar's all along has no concrete of its own.
    const bool hasStrip =
        std::any_of(out_.foundations.begin(), out_.foundations.end(),
                    [&](const FoundationRun& run) { return run.wall == index && !run.onCellar; });
    if (!hasStrip) return;
    pull(faces.foundationOuter, false);
    pull(faces.foundationInner, false);
  }

  const Job& job_;
  const SettingOut& out_;
  Works& works_;
  SettingOutGround ground_;
  Placement boardsGo_, stringsGo_, digStarts_;
  double top_ = 0;
};

}  // namespace

void buildProfiles(const Job& job, const SettingOut& settingOut, Works& works) {
  ProfileBuilder(job, settingOut, works).build();
}

}  // namespace model
