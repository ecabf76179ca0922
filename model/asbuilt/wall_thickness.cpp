#include "model/asbuilt/wall_thickness.h"

#include <algorithm>
#include <cmath>

#include "model/asbuilt/words.h"

namespace model {

namespace {

constexpr double kClear = 0.050;       // NHBC Good Craftsmanship Guide, Brickwork: clear cavity
constexpr double kBedded = 0.050;      // the same: embedment of a tie in each leaf
constexpr double kBoardsGive = 0.003;  // common practice, no source: pressed in
constexpr double kReadTo = 0.002;      // common practice, no source: how near a face is read
constexpr double kTiesGive = 0.010;    // common practice, no source: ties as ordered still do
constexpr double kPlateGives = 0.015;  // common practice, no source: a plate may be moved so far

bool less(const WallWidth& a, const WallWidth& b) { return a.width < b.width; }

double rounded(double metres) { return std::round(metres * 1000) / 1000; }

// Where both are known: at every reading of either.
std::vector<double> places(const WallProfile& a, const WallProfile& b) {
  std::vector<double> all;
  for (const WallProfile* profile : {&a, &b}) {
    for (const AlongWall& point : *profile) {
      if (between(a, point.s) && between(b, point.s)) all.push_back(point.s);
    }
  }
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end(), [](double x, double y) { return y - x < 0.001; }),
            all.end());
  return all;
}

std::string at(const WallLine& wall, const SettingOut& out, double s) {
  return " at " + lengthText(s) + " from " + out.corners[wall.from].letter;
}

void judgeCavity(const Job& job, const SettingOut& out, CavityAsBuilt& cavity) {
  const WallBuildUp& walls = job.walls;
  const WallLine& wall = out.walls[cavity.wall];
  const double least = rounded(cavity.least.width), most = rounded(cavity.most.width);
  const double clear = std::min(kClear, walls.cavity - walls.insulation);
  cavity.insulationFits = least >= walls.insulation - kBoardsGive - 1e-9;
  cavity.clearEnough = least - walls.insulation >= clear - kReadTo - 1e-9;
  cavity.tieLength = cavity.most.width + 2 * kBedded;
  cavity.words = "cavity of " + wall.name + ": " + millimetres(least) + " to " + millimetres(most) +
                 ", " + millimetres(cavity.drawn) + " drawn";
  const auto add = [&](const std::string& words) {
    cavity.words += "; " + words;
    cavity.changes = true;
  };
  if (!cavity.insulationFits) {
    add("boards of " + millimetres(walls.insulation) + " do not go in" +
        at(wall, out, cavity.least.s) + ": trim the high spot or take thinner boards");
  } else if (!cavity.clearEnough) {
    add("only " + millimetres(least - walls.insulation) + " clear beside the boards" +
        at(wall, out, cavity.least.s) + ", " + millimetres(clear) + " wanted");
  }
  if (most > cavity.drawn + kTiesGive + 1e-9) {
    add("ties must be " + millimetres(rounded(cavity.tieLength)) +
        " long or more to bed 50 in both leaves" + at(wall, out, cavity.most.s));
  }
}

}  // namespace

std::vector<CavityAsBuilt> deriveCavities(const Job& job, const SettingOut& settingOut,
                                          const std::vector<Deviation>& deviations) {
  std::vector<CavityAsBuilt> all;
  for (size_t i = 0; i < settingOut.walls.size(); ++i) {
    const auto read = [&](const char* target) {
      return profileOf(settingOut, deviations, i, target);
    };
    const WallProfile outer = withMore(read("outer-leaf-back"), read("outer-face"));
    const WallProfile inner = withMore(read("inner-leaf-front"), read("inner-face"));
    CavityAsBuilt cavity;
    cavity.wall = i;
    cavity.drawn = job.walls.cavity;
    for (const double s : places(outer, inner))
      cavity.widths.push_back({s, cavity.drawn + *between(outer, s) - *between(inner, s)});
    if (cavity.widths.empty()) continue;
    cavity.least = *std::min_element(cavity.widths.begin(), cavity.widths.end(), less);
    cavity.most = *std::max_element(cavity.widths.begin(), cavity.widths.end(), less);
    judgeCavity(job, settingOut, cavity);
    all.push_back(std::move(cavity));
  }
  return all;
}

std::vector<BearingAsBuilt> deriveBearings(const Job& job, const SettingOut& settingOut,
                                           const std::vector<Deviation>& deviations) {
  const double drawnFront = settingOut.faceDistances.innerLeafFront;
  const double drawnBack = settingOut.faceDistances.innerFace;
  std::vector<BearingAsBuilt> all;
  for (size_t i = 0; i < settingOut.walls.size(); ++i) {
    const WallLine& wall = settingOut.walls[i];
    const WallProfile front = profileOf(settingOut, deviations, i, "inner-leaf-front");
    const WallProfile back = profileOf(settingOut, deviations, i, "inner-face");
    if (front.empty() && back.empty()) continue;
    BearingAsBuilt bearing;
    bearing.wall = i;
    bearing.leafRead = !places(front, back).empty();
    bearing.leafDrawn = job.walls.innerLeaf;
    bearing.plateDrawn = std::min(job.roof.plateWidth, job.walls.innerLeaf);
    bearing.leastLeaf.width = bearing.leastPlate.width = 1e300;
    std::vector<WallWidth> leaf, plate;
    const bool both = bearing.leafRead;
    // Where only one face was read the leaf is taken to be as thick as drawn.
    const WallProfile& one = front.empty() ? back : front;
    for (const double s : both ? places(front, back) : places(one, one)) {
      const double f = drawnFront - (both ? *between(front, s) : *between(one, s));
      const double b = drawnBack - (both ? *between(back, s) : *between(one, s));
      leaf.push_back({s, b - f});
      plate.push_back({s, std::min(drawnFront + job.roof.plateWidth, b) - std::max(drawnFront, f)});
    }
    bearing.leastLeaf = *std::min_element(leaf.begin(), leaf.end(), less);
    bearing.leastPlate = *std::min_element(plate.begin(), plate.end(), less);
    const bool hasPlate = wall.eaves == EavesKind::Hip;
    const double lostLeaf = rounded(bearing.leafDrawn - bearing.leastLeaf.width);
    const double lostPlate = rounded(bearing.plateDrawn - bearing.leastPlate.width);
    bearing.words = "inner leaf of " + wall.name + ":";
    if (both)
      bearing.words += " " + millimetres(rounded(bearing.leastLeaf.width)) +
                       " to bear on at the least," + " " + millimetres(bearing.leafDrawn) +
                       " drawn";
    if (hasPlate)
      bearing.words += std::string(both ? ";" : "") + " the plate on its line bears on " +
                       millimetres(rounded(bearing.leastPlate.width)) + " of " +
                       millimetres(bearing.plateDrawn) + at(wall, settingOut, bearing.leastPlate.s);
    if (!both && !hasPlate) continue;
    bearing.changes = lostLeaf > 0.005 || (hasPlate && lostPlate >= 0.005);
    if (hasPlate && lostPlate >= 0.005)
      bearing.words +=
          lostPlate <= kPlateGives
              ? ": set the plate to its line, not to the leaf, or move it with the leaf "
                "and cut those rafters to suit"
              : ": ask the designer before the plate is bedded";
    if (lostLeaf > 0.005) bearing.words += "; check what bears there against the drawing";
    all.push_back(std::move(bearing));
  }
  return all;
}

}  // namespace model
