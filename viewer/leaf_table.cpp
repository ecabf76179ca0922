#include "viewer/leaf_table.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <map>
#include <tuple>

#include <glm/geometric.hpp>

#include "viewer/leaf_meetings.h"
#include "viewer/unit_instance.h"

namespace viewer {

namespace {

// Whole tenths of a millimetre throughout.
constexpr std::int32_t kWidestGap = 300;    // kWidestJoint, in tenths of a millimetre
constexpr std::int32_t kThickestBed = 400;  // a first bed, or one that makes up a height
constexpr std::int32_t kSame = 10;          // a millimetre
constexpr std::int32_t kBeyondJoint = 140;  // a cell is so much shorter than the shortest unit
constexpr double kCollar = 0.012;           // metres of mortar behind a unit that is not the face

struct Ref {
  std::int32_t s0, s1, z0, z1;
  std::uint32_t seed, piece, element, unit;
  bool own;    // of this leaf; else the end of a unit that turns the corner
  bool at[2];  // seen on the front, on the back
};

struct Leaf {
  std::vector<Ref> refs;
  std::vector<std::array<std::int32_t, 2>> depths;
  std::int32_t front = 0, back = 0;
  std::int32_t s0 = 0, s1 = 0, z0 = 0;  // of its units
  std::int32_t foot = 0;                // underside of the first bed
};

struct Column {
  std::int32_t s0, s1;
  std::uint32_t seed, piece;
  std::int32_t split = 0, splitBed = 0;
  bool operator==(const Column&) const = default;
};

struct Band {
  std::int32_t z0, z1;
  std::int64_t length = 0;  // of all units that fill it
};

class Builder {
 public:
  explicit Builder(const model::Works& works) : works_(works) {}
  LeafTable build();

 private:
  void collect();
  void turnCorners();
  void addReturns(std::size_t from, bool atEnd);
  void write(std::size_t frame);
  static std::vector<Band> bandsOf(const std::vector<Ref>& refs);
  void mortar(std::vector<const Ref*>& row);
  void pair(std::uint32_t a, std::uint32_t b);
  std::uint32_t rowAt(const std::vector<Column>& columns, std::uint32_t cells);
  static std::vector<Column> columnsOf(const std::vector<const Ref*>& row, int face,
                                       std::int32_t z0);

  const model::Works& works_;
  LeafTable table_;
  std::vector<Leaf> leaves_;
  using Plane = std::tuple<int, int, std::int64_t>;
  std::map<Plane, std::vector<std::pair<std::size_t, int>>> faces_;  // leaf, 0 front or 1 back
  // Of the leaf that is written:
  std::int32_t cell_ = 0, origin_ = 0;
  std::vector<std::pair<std::vector<Column>, std::uint32_t>> rows_;
};

glm::uvec4 floats(double a, double b, double c, double d) {
  const auto bits = [](double v) { return std::bit_cast<std::uint32_t>(static_cast<float>(v)); };
  return {bits(a), bits(b), bits(c), bits(d)};
}

std::uint8_t depthOf(Leaf& leaf, const model::MasonryUnit& unit) {
  const std::array<std::int32_t, 2> depth{tenths(static_cast<double>(unit.d0)),
                                          tenths(static_cast<double>(unit.d1))};
  for (std::size_t i = 0; i < leaf.depths.size(); ++i)
    if (leaf.depths[i] == depth) return static_cast<std::uint8_t>(i);
  if (leaf.depths.size() == 8) return 7;  // no leaf has so many
  leaf.depths.push_back(depth);
  return static_cast<std::uint8_t>(leaf.depths.size() - 1);
}

void Builder::collect() {
  leaves_.resize(works_.frames.size());
  table_.depths.resize(works_.units.size());
  for (const model::Element& element : works_.elements)
    if (element.unitCount > 0)
      leaves_[element.frame].refs.reserve(leaves_[element.frame].refs.size() + element.unitCount);
  for (std::uint32_t e = 0; e < works_.elements.size(); ++e) {
    const model::Element& element = works_.elements[e];
    if (element.unitCount == 0) continue;
    Leaf& leaf = leaves_[element.frame];
    const std::int32_t underside = tenths(element.underside);
    leaf.foot = leaf.refs.empty() ? underside : std::min(leaf.foot, underside);
    const std::uint32_t seed = leafSeed(element.frame);
    for (std::size_t i = element.firstUnit; i < element.firstUnit + element.unitCount; ++i) {
      const model::MasonryUnit& unit = works_.units[i];
      table_.depths[i] = depthOf(leaf, unit);
      const std::int32_t s0 = tenths(unit.s0);
      leaf.refs.push_back({s0,
                           tenths(unit.s1),
                           tenths(unit.z0),
                           tenths(unit.z1),
                           unitSeed(s0, seed),
                           static_cast<std::uint32_t>(unit.piece),
                           e,
                           static_cast<std::uint32_t>(i),
                           true,
                           {true, true}});
    }
  }
  for (Leaf& leaf : leaves_) {
    if (leaf.refs.empty()) continue;
    leaf.front = leaf.depths[0][0];
    leaf.back = leaf.depths[0][1];
    for (const auto& depth : leaf.depths) {
      leaf.front = std::min(leaf.front, depth[0]);
      leaf.back = std::max(leaf.back, depth[1]);
    }
    leaf.s0 = leaf.refs[0].s0, leaf.s1 = leaf.refs[0].s1, leaf.z0 = leaf.refs[0].z0;
    for (Ref& ref : leaf.refs) {
      const auto& depth = leaf.depths[table_.depths[ref.unit]];
      ref.at[0] = depth[0] < leaf.front + kSame;
      ref.at[1] = depth[1] > leaf.back - kSame;
      leaf.s0 = std::min(leaf.s0, ref.s0);
      leaf.s1 = std::max(leaf.s1, ref.s1);
      leaf.z0 = std::min(leaf.z0, ref.z0);
    }
  }
}

std::tuple<int, int, std::int64_t> planeOf(const model::Vec2& normal, const model::Vec2& on) {
  return {static_cast<int>(std::lround(normal.x * 1000)),
          static_cast<int>(std::lround(normal.y * 1000)),
          std::llround(glm::dot(normal, on) * 1000)};
}

// At a corner that is not mitred every other course shows the end of a unit of the other wall.
void Builder::turnCorners() {
  for (std::size_t f = 0; f < leaves_.size(); ++f) {
    if (leaves_[f].refs.empty()) continue;
    const model::UnitFrame& frame = works_.frames[f];
    const double front = leaves_[f].front / 10000.0, back = leaves_[f].back / 10000.0;
    faces_[planeOf(-frame.inward, frame.start + frame.inward * front)].emplace_back(f, 0);
    faces_[planeOf(frame.inward, frame.start + frame.inward * back)].emplace_back(f, 1);
  }
  for (std::size_t f = 0; f < leaves_.size(); ++f) {
    if (leaves_[f].refs.empty()) continue;
    addReturns(f, false);
    addReturns(f, true);
  }
}

void Builder::addReturns(std::size_t from, bool atEnd) {
  const Leaf& leaf = leaves_[from];
  const model::UnitFrame& frame = works_.frames[from];
  const std::int32_t s = atEnd ? leaf.s1 : leaf.s0;
  const model::Vec2 end = frame.start + frame.along * (s / 10000.0);
  auto [x, y, offset] = planeOf(atEnd ? frame.along : -frame.along, end);
  for (const std::int64_t near : {offset - 1, offset, offset + 1}) {
    const auto found = faces_.find({x, y, near});
    if (found == faces_.end()) continue;
    for (const auto& [to, face] : found->second) {
      Leaf& other = leaves_[to];
      const model::UnitFrame& its = works_.frames[to];
      const auto across = [&](std::int32_t d) {
        return tenths(glm::dot(end + frame.inward * (d / 10000.0) - its.start, its.along));
      };
      const std::int32_t first = across(leaf.front), last = across(leaf.back);
      if (std::max(first, last) < other.s0 - kWidestGap ||
          std::min(first, last) > other.s1 + kWidestGap)
        continue;
      for (std::size_t i = 0; i < leaf.refs.size(); ++i) {
        const Ref& ref = leaf.refs[i];
        if (!ref.own) break;  // what came round a corner goes round no other
        if (std::abs((atEnd ? ref.s1 : ref.s0) - s) > kSame) continue;
        const auto& depth = leaf.depths[table_.depths[ref.unit]];
        Ref turned = ref;
        turned.own = false;
        turned.s0 = std::min(across(depth[0]), across(depth[1]));
        turned.s1 = std::max(across(depth[0]), across(depth[1]));
        turned.at[0] = face == 0;
        turned.at[1] = face == 1;
        other.refs.push_back(turned);
      }
    }
  }
}

// The courses of a leaf: the heights that most of its length has; what is split or stands over two
// courses belongs to the one that it shares most with.
std::vector<Band> Builder::bandsOf(const std::vector<Ref>& refs) {
  std::vector<Band> found;
  std::map<std::array<std::int32_t, 2>, std::size_t> places;
  std::size_t last = 0;
  for (const Ref& ref : refs) {
    if (!ref.own) continue;
    if (found.empty() || found[last].z0 != ref.z0 || found[last].z1 != ref.z1) {
      const auto [place, isNew] = places.try_emplace({ref.z0, ref.z1}, found.size());
      if (isNew) found.push_back({ref.z0, ref.z1, 0});
      last = place->second;
    }
    found[last].length += ref.s1 - ref.s0;
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const Band& a, const Band& b) { return a.length > b.length; });
  std::map<std::int32_t, Band> bands;  // by underside
  for (const Band& band : found) {
    const auto over = bands.lower_bound(band.z1);
    if (over != bands.begin() && std::prev(over)->second.z1 > band.z0) continue;
    bands[band.z0] = band;
  }
  std::vector<Band> sorted;
  for (const auto& [z0, band] : bands) sorted.push_back(band);
  return sorted;
}

void Builder::pair(std::uint32_t a, std::uint32_t b) {
  if (a == b) return;
  table_.neighbours.push_back({a, b});
  table_.neighbours.push_back({b, a});
}

// Cross joints between units that were not laid one after the other: the later one brings the
// mortar.
void Builder::mortar(std::vector<const Ref*>& row) {
  for (std::size_t i = 1; i < row.size(); ++i) {
    const Ref &a = *row[i - 1], &b = *row[i];
    const std::int32_t gap = b.s0 - a.s1;
    if (gap > kWidestGap || gap < -kSame) continue;
    if (!a.own || !b.own) pair(a.element, b.element);
    if (!a.own && !b.own) continue;
    if (a.own && b.own && (a.unit + 1 == b.unit || b.unit + 1 == a.unit)) continue;
    if (!b.own || (a.own && a.unit > b.unit))
      table_.joints.push_back({a.unit, kJointAtEnd});
    else
      table_.joints.push_back({b.unit, kJointAtStart});
  }
}

std::vector<Column> Builder::columnsOf(const std::vector<const Ref*>& row, int face,
                                       std::int32_t z0) {
  std::vector<Column> columns;
  std::int32_t top = 0;  // of the last column's lowest unit
  for (const Ref* ref : row) {
    if (!ref->at[face]) continue;
    if (columns.empty() || ref->s0 >= columns.back().s1 - kSame * 5) {
      columns.push_back({ref->s0, ref->s1, ref->seed, ref->piece});
      top = ref->z1;
      // Over a lintel that reaches into the course.
      if (ref->z0 > z0 + kSame) columns.back().split = ref->z0 - z0, columns.back().splitBed = 100;
    } else if (Column& under = columns.back(); ref->z0 >= top && under.split == 0) {
      under.split = ref->z0 - z0;
      under.splitBed = std::min(ref->z0 - top, 255);
    }
  }
  return columns;
}

// The cells of a row, shared with a row that is the same.
std::uint32_t Builder::rowAt(const std::vector<Column>& columns, std::uint32_t cells) {
  for (const auto& [known, first] : rows_)
    if (known == columns) return first;
  const auto first = static_cast<std::uint32_t>(table_.texels.size());
  rows_.emplace_back(columns, first);
  std::size_t i = 0;  // the joint is the one before column i + 1
  const auto width = [&](std::size_t joint) {
    const std::int32_t gap = columns[joint + 1].s0 - columns[joint].s1;
    return gap > kWidestGap || gap < 0 ? 0 : gap;
  };
  const auto middle = [&](std::size_t joint) { return columns[joint + 1].s0 - width(joint) / 2; };
  for (std::uint32_t c = 0; c < cells; ++c) {
    glm::uvec4 texel(0);
    if (!columns.empty()) {
      const std::int32_t centre = origin_ + static_cast<std::int32_t>(c) * cell_ + cell_ / 2;
      while (i + 2 < columns.size() &&
             std::abs(middle(i + 1) - centre) <= std::abs(middle(i) - centre))
        ++i;
      const bool joint = columns.size() > 1;
      const Column &before = columns[i], &after = columns[joint ? i + 1 : i];
      const auto at = static_cast<std::uint32_t>(std::max(0, after.s0 - origin_));
      texel.x = at | (joint ? static_cast<std::uint32_t>(width(i)) << 20 : 0);
      texel.y = before.seed | before.piece << 20;
      texel.z = after.seed | after.piece << 20;
      texel.w = static_cast<std::uint32_t>(std::clamp(before.split, 0, 0xfff)) |
                static_cast<std::uint32_t>(std::clamp(after.split, 0, 0xfff)) << 12 |
                static_cast<std::uint32_t>(std::max(before.splitBed, after.splitBed)) << 24;
    }
    table_.texels.push_back(texel);
  }
  return first;
}

void Builder::write(std::size_t frame) {
  Leaf& leaf = leaves_[frame];
  const std::vector<Band> bands = bandsOf(leaf.refs);
  // Units by course.
  std::vector<std::vector<const Ref*>> rows(bands.size());
  std::size_t last = 0;
  for (const Ref& ref : leaf.refs) {
    const std::int32_t middle = (ref.z0 + ref.z1) / 2;
    if (middle < bands[last].z0 || middle > bands[last].z1) {
      const auto over = std::upper_bound(bands.begin(), bands.end(), middle,
                                         [](std::int32_t z, const Band& b) { return z < b.z0; });
      last = over == bands.begin() ? 0 : static_cast<std::size_t>(over - bands.begin()) - 1;
    }
    rows[last].push_back(&ref);
  }
  bool differs = false;
  std::int32_t shortest = 1 << 20, most = 0;
  std::int64_t lengths = 0, count = 0, joints = 0, jointCount = 0;
  std::map<std::int32_t, int> beds;
  for (std::size_t i = 0; i < bands.size(); ++i) {
    auto& row = rows[i];
    const auto before = [](const Ref* a, const Ref* b) {
      return a->s0 != b->s0 ? a->s0 < b->s0 : a->z0 < b->z0;
    };
    if (!std::is_sorted(row.begin(), row.end(), before)) std::sort(row.begin(), row.end(), before);
    mortar(row);
    for (std::size_t k = 0; k < row.size(); ++k) {
      differs = differs || !row[k]->at[0] || !row[k]->at[1];
      lengths += row[k]->s1 - row[k]->s0;
      ++count;
      if (k == 0) continue;
      const std::int32_t gap = row[k]->s0 - row[k - 1]->s1;
      if (gap < 0 || gap > kWidestGap) continue;
      joints += gap;
      ++jointCount;
      shortest = std::min(shortest, row[k]->s0 - row[k - 1]->s0);
    }
    if (i > 0 && bands[i].z0 - bands[i - 1].z1 <= kThickestBed)
      ++beds[bands[i].z0 - bands[i - 1].z1];
  }
  std::int32_t bed = 100, often = 0;
  for (const auto& [thick, times] : beds) {
    most = std::max(most, thick);
    if (times > often) often = times, bed = thick;
  }
  const std::int32_t firstBed = std::clamp(leaf.z0 - leaf.foot, 0, kThickestBed);
  most = std::max(most, firstBed);
  std::int32_t shortestRow = 1 << 20;
  for (std::size_t i = 1; i < bands.size(); ++i)
    shortestRow = std::min(shortestRow, bands[i].z0 - bands[i - 1].z0);

  const auto header = static_cast<std::uint32_t>(table_.texels.size());
  table_.leaves[frame] = header;
  table_.texels.resize(header + kLeafHeader);
  std::int32_t end = leaf.s1;
  origin_ = leaf.s0;
  for (const Ref& ref : leaf.refs) origin_ = std::min(origin_, ref.s0), end = std::max(end, ref.s1);
  cell_ = std::clamp(shortest - kBeyondJoint, 200, 1200);
  const auto cells = static_cast<std::uint32_t>((end - origin_) / cell_ + 1);
  const std::int32_t height = std::clamp(shortestRow - kBeyondJoint, 200, 2000);
  const auto levels = static_cast<std::uint32_t>((bands.back().z1 - leaf.z0) / height + 1);
  rows_.clear();
  std::array<std::vector<std::uint32_t>, 2> first;
  for (int face = 0; face < (differs ? 2 : 1); ++face)
    for (std::size_t i = 0; i < bands.size(); ++i)
      first[static_cast<std::size_t>(face)].push_back(
          rowAt(columnsOf(rows[i], face, bands[i].z0), cells));

  const auto levelCells = static_cast<std::uint32_t>(table_.texels.size());
  const auto bedOf = [&](std::size_t i) {
    if (i == 0) return firstBed;
    const std::int32_t gap = bands[i].z0 - bands[i - 1].z1;
    return gap < 0 || gap > kThickestBed ? 0 : gap;
  };
  for (int face = 0; face < (differs ? 2 : 1); ++face) {
    const auto& starts = first[static_cast<std::size_t>(face)];
    std::size_t i = 0;
    const auto middle = [&](std::size_t band) { return bands[band].z0 - bedOf(band) / 2; };
    for (std::uint32_t c = 0; c < levels; ++c) {
      const std::int32_t centre = leaf.z0 + static_cast<std::int32_t>(c) * height + height / 2;
      while (i + 1 < bands.size() &&
             std::abs(middle(i + 1) - centre) <= std::abs(middle(i) - centre))
        ++i;
      const std::size_t under = i > 0 ? i - 1 : 0;
      table_.texels.emplace_back(static_cast<std::uint32_t>(bands[i].z0 - leaf.z0),
                                 static_cast<std::uint32_t>(bedOf(i)) |
                                     static_cast<std::uint32_t>(bands[i].z0 - bands[under].z0)
                                         << 10,
                                 starts[under], starts[i]);
    }
  }
  // Units whose bed is thicker than the others'.
  for (std::size_t i = 0; i < bands.size(); ++i) {
    if (bedOf(i) <= bed + kSame) continue;
    for (const Ref* ref : rows[i])
      if (ref->own) table_.joints.push_back({ref->unit, kThickBed});
  }
  const model::UnitFrame& in = works_.frames[frame];
  const double left = in.inward.y * in.along.x - in.inward.x * in.along.y;
  const double meanJoint =
      jointCount > 0 ? static_cast<double>(joints) / static_cast<double>(jointCount) : 100;
  const auto bits = [](std::int32_t v) { return static_cast<std::uint32_t>(v); };
  glm::uvec4* to = &table_.texels[header];
  to[0] = {bits(leaf.z0), bits(height), levels, levelCells};
  to[1] = {bits(origin_), bits(cell_), cells, leafSeed(frame) | (differs ? kBackDiffers : 0)};
  to[2] = floats(in.skewStart, in.skewEnd, left > 0 ? 1 : -1, bed / 10000.0);
  to[3] = floats((static_cast<double>(lengths) / static_cast<double>(count) + meanJoint) / 10000,
                 (bands.back().z1 - bands.front().z0) / 10000.0 / static_cast<double>(bands.size()),
                 meanJoint / 10000, most / 10000.0);
  for (std::size_t i = 0; i < leaf.depths.size(); ++i) {
    const double d0 = leaf.depths[i][0] / 10000.0, d1 = leaf.depths[i][1] / 10000.0;
    to[4 + i] = floats(d0, d1, leaf.depths[i][0] > leaf.front + kSame ? d0 - kCollar : d0,
                       leaf.depths[i][1] < leaf.back - kSame ? d1 + kCollar : d1);
  }
}

LeafTable Builder::build() {
  table_.leaves.assign(works_.frames.size(), kNoLeaf);
  table_.texels.assign(1, glm::uvec4(0));  // 0 is no leaf's header
  collect();
  turnCorners();
  for (std::size_t f = 0; f < leaves_.size(); ++f)
    if (!leaves_[f].refs.empty()) write(f);
  for (const auto& joint : jointsBetweenLeaves(works_)) table_.joints.push_back(joint);
  std::sort(table_.neighbours.begin(), table_.neighbours.end());
  table_.neighbours.erase(std::unique(table_.neighbours.begin(), table_.neighbours.end()),
                          table_.neighbours.end());
  return std::move(table_);
}

}  // namespace

std::uint32_t leafSeed(std::size_t frame) {
  return (static_cast<std::uint32_t>(frame) * 0x9e3779b1u >> 11) & 0xfffffu;
}

LeafTable buildLeafTable(const model::Works& works) { return Builder(works).build(); }

}  // namespace viewer
