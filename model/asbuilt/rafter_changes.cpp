#include "model/asbuilt/rafter_changes.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include <glm/geometric.hpp>

#include "model/works/roof_frame.h"

namespace model {

namespace {

constexpr double kSawn = 0.003;  // common practice, no source: a cut is no truer

// Where a rafter's centre line crosses what it is cut to.
struct End {
  double inward = 0;  // from the outer face
  const RoofLine* line = nullptr;
};

// The shift of a slope: by its wall, at a point's foot on it.
class Slopes {
 public:
  Slopes(const SettingOut& out, const std::vector<PlateLine>& plates) : out_(out) {
    byWall_.resize(out.walls.size());
    for (const PlateLine& plate : plates) byWall_[plate.wall] = plate;
  }

  const PlateLine& plate(size_t wall) const { return byWall_[wall]; }
  double out(size_t wall, double s) const { return heldAt(byWall_[wall].out, s); }
  double up(size_t wall, double s) const { return heldAt(byWall_[wall].up, s); }
  double shift(size_t wall, const Vec2& p) const {
    const WallLine& line = out_.walls[wall];
    const double s = glm::dot(p - line.start, line.along);
    return out(wall, s) + up(wall, s) / out_.tanPitch;
  }

 private:
  const SettingOut& out_;
  std::vector<PlateLine> byWall_;
};

std::vector<PlateLine> readPlates(const SettingOut& out, const std::vector<Deviation>& deviations) {
  std::vector<PlateLine> plates;
  for (size_t i = 0; i < out.walls.size(); ++i) {
    if (out.walls[i].eaves != EavesKind::Hip) continue;
    const auto first = [&](const char* better, const char* other) {
      WallProfile profile = profileOf(out, deviations, i, better);
      return profile.empty() ? profileOf(out, deviations, i, other) : profile;
    };
    PlateLine plate{i, first("plate-top", "wall-top"), first("inner-leaf-front", "inner-face")};
    if (plate.read()) plates.push_back(std::move(plate));
  }
  return plates;
}

class RafterReader {
 public:
  RafterReader(const Job& job, const SettingOut& out, const Slopes& slopes)
      : job_(job), out_(out), slopes_(slopes), plateAt_(out.faceDistances.innerLeafFront) {}

  std::vector<RafterChange> read() const {
    std::vector<RafterChange> all;
    const RoofFrame frame = deriveRoofFrame(job_, out_);
    for (size_t f = 0; f < frame.clear.size(); ++f) {
      const size_t wall = out_.roof.faces[f].edge;
      const auto strips = rafterStrips(job_, out_, f, frame.clear[f]);
      for (size_t k = 0; k < strips.size(); ++k) {
        const std::string id = "rafters/" + out_.walls[wall].name + "/" + std::to_string(k + 1);
        if (auto change = readOne(wall, strips[k])) {
          change->id = id;
          all.push_back(std::move(*change));
        }
      }
    }
    return all;
  }

 private:
  std::optional<RafterChange> readOne(size_t wall, const Polygon& strip) const {
    const WallLine& line = out_.walls[wall];
    const auto local = [&](const Vec2& p) {
      return Vec2{glm::dot(p - line.start, line.along), -glm::dot(p - line.start, line.outward)};
    };
    double west = 1e300, east = -1e300;
    for (const Vec2& p : strip) {
      west = std::min(west, local(p).x);
      east = std::max(east, local(p).x);
    }
    RafterChange r;
    r.wall = wall;
    r.s = (west + east) / 2;
    // The centre line's own length within the strip.
    double low = 1e300, high = -1e300;
    for (size_t i = 0; i < strip.size(); ++i) {
      const Vec2 a = local(strip[i]), b = local(strip[(i + 1) % strip.size()]);
      if ((a.x - r.s) * (b.x - r.s) > 0 || std::abs(a.x - b.x) < 1e-9) continue;
      const double y = a.y + (b.y - a.y) * (r.s - a.x) / (b.x - a.x);
      low = std::min(low, y);
      high = std::max(high, y);
    }
    const auto top = crossing(wall, r.s, high, true);
    if (!top || high <= low) return std::nullopt;
    std::optional<End> bottom;
    r.onPlate = low < plateAt_ + 1e-6;
    if (!r.onPlate) bottom = crossing(wall, r.s, low, false);
    if (!r.onPlate && !bottom) return std::nullopt;
    r.run = top->inward - (r.onPlate ? plateAt_ : bottom->inward);
    if (r.run < 1e-6) return std::nullopt;
    measure(*top, bottom, r);
    return r;
  }

  // Next roof line of the slope at or beyond `from`, up the slope or down it.
  std::optional<End> crossing(size_t wall, double s, double from, bool up) const {
    const WallLine& line = out_.walls[wall];
    std::optional<End> best;
    for (const RoofLine& roofLine : out_.roof.lines) {
      if (roofLine.kind == RoofLineKind::Eaves || roofLine.kind == RoofLineKind::Verge) continue;
      if (roofLine.faceA != wall && roofLine.faceB != wall) continue;
      const double sa = glm::dot(roofLine.a - line.start, line.along);
      const double sb = glm::dot(roofLine.b - line.start, line.along);
      if (std::abs(sa - sb) < 1e-9 || s < std::min(sa, sb) - 1e-6 || s > std::max(sa, sb) + 1e-6)
        continue;
      const double ia = -glm::dot(roofLine.a - line.start, line.outward);
      const double ib = -glm::dot(roofLine.b - line.start, line.outward);
      const double inward = ia + (ib - ia) * (s - sa) / (sb - sa);
      if (up ? inward < from - 1e-6 : inward > from + 1e-6) continue;
      if (best && (up ? inward >= best->inward : inward <= best->inward)) continue;
      best = End{inward, &roofLine};
    }
    return best;
  }

  // How far the roof line moves along the rafter, up it.
  double moved(size_t wall, double s, const End& end) const {
    const size_t other = end.line->faceA == wall ? end.line->faceB : end.line->faceA;
    const WallLine &mine = out_.walls[wall], &its = out_.walls[other];
    const Vec2 at = mine.at(s, end.inward);
    const double c = glm::dot(mine.outward, its.outward);
    return (slopes_.shift(other, at) - slopes_.shift(wall, at)) / (1 - c);
  }

  void measure(const End& top, const std::optional<End>& bottom, RafterChange& r) const {
    const double cosine = cosPitch(out_);
    r.rise = r.run * out_.tanPitch;
    r.length = r.run / cosine;
    r.out = slopes_.out(r.wall, r.s);
    r.up = slopes_.up(r.wall, r.s);
    const double run = r.run + (r.onPlate ? r.out : 0), rise = r.rise - (r.onPlate ? r.up : 0);
    r.ridgeHeld = std::hypot(run, rise) - r.length;
    r.pitchThen = std::atan2(rise, run) * 180 / std::numbers::pi;
    const double up = moved(r.wall, r.s, top);
    const double low = r.onPlate ? -r.out : moved(r.wall, r.s, *bottom);
    r.pitchHeld = (up - low) / cosine;
    // Its slope is shifted by e, so that a point at the same place on plan rises by e tan(pitch).
    r.topUp = (up + slopes_.shift(r.wall, out_.walls[r.wall].at(r.s))) * out_.tanPitch;
    r.atRidge = top.line->kind == RoofLineKind::Ridge;
    const PlateLine& plate = slopes_.plate(r.wall);
    const auto outside = [&](const WallProfile& profile) {
      return !profile.empty() && !between(profile, r.s);
    };
    r.beyond = r.onPlate && (outside(plate.up) || outside(plate.out));
  }

  const Job& job_;
  const SettingOut& out_;
  const Slopes& slopes_;
  double plateAt_;
};

std::string fromTo(double first, double last) {
  const std::string a = longerText(first), b = longerText(last);
  return a == b ? a : a + " to " + b;
}

// A sentence for each wall whose rafters change, and one for its ridge.
void addWords(const SettingOut& out, RafterChanges& changes) {
  for (size_t wall = 0; wall < out.walls.size(); ++wall) {
    std::vector<const RafterChange*> mine;
    for (const RafterChange& r : changes.rafters) {
      if (r.wall == wall) mine.push_back(&r);
    }
    if (mine.empty()) continue;
    const auto range = [&](double RafterChange::*member) {
      const auto [low, high] = std::minmax_element(
          mine.begin(), mine.end(),
          [&](const auto* a, const auto* b) { return a->*member < b->*member; });
      return std::pair{(*low)->*member, (*high)->*member};
    };
    const auto held = range(&RafterChange::ridgeHeld), pitch = range(&RafterChange::pitchHeld);
    const auto still = [](const std::pair<double, double>& r) {
      return std::max(std::abs(r.first), std::abs(r.second)) < kSawn;
    };
    const std::string& name = out.walls[wall].name;
    if (!still(held) || !still(pitch)) {
      changes.words.push_back(
          {wall, "rafters over " + name + ": with the ridge held " +
                     fromTo(held.first, held.second) + ", with the pitch held " +
                     fromTo(pitch.first, pitch.second) +
                     (longerText(held.first) == longerText(held.second) &&
                              longerText(pitch.first) == longerText(pitch.second)
                          ? ""
                          : "; each its own length, so no one pattern")});
    }
    double least = 1e300, most = -1e300;
    for (const RafterChange* r : mine) {
      if (!r->atRidge) continue;
      least = std::min(least, r->topUp);
      most = std::max(most, r->topUp);
    }
    if (least > most || still({least, most})) continue;
    const auto high = [](double up) { return offText(ReadingKind::Level, up); };
    changes.words.push_back({wall, "ridge over " + name + ", with the pitch held: " + high(least) +
                                       (high(least) == high(most)
                                            ? std::string()
                                            : " to " + high(most) +
                                                  ", so out of level; true up the plates, or hold "
                                                  "the ridge and let the pitch vary")});
  }
}

}  // namespace

std::string longerText(double change) {
  const std::string amount = lengthText(std::abs(change));
  return amount == "0" ? "as drawn" : amount + (change > 0 ? " longer" : " shorter");
}

std::string plateText(const RafterChange& rafter) {
  if (!rafter.onPlate) return "starts on a valley";
  const std::string words =
      offText(ReadingKind::Face, rafter.out) + ", " + offText(ReadingKind::Level, rafter.up);
  return words == "on, on" ? "on" : words;
}

RafterChanges deriveRafterChanges(const Job& job, const SettingOut& settingOut,
                                  const std::vector<Deviation>& deviations) {
  RafterChanges changes;
  changes.plates = readPlates(settingOut, deviations);
  if (changes.plates.empty() || settingOut.tanPitch < 1e-9) return changes;
  changes.rafters = RafterReader(job, settingOut, Slopes(settingOut, changes.plates)).read();
  addWords(settingOut, changes);
  return changes;
}

}  // namespace model
