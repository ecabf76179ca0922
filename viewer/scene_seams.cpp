#include "viewer/scene_seams.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <iterator>
#include <span>

#include <glm/geometric.hpp>

#include "model/in_parallel.h"
#include "viewer/sort_in_buckets.h"

namespace viewer {

namespace {

constexpr float kTouch = 0.001f;  // metres that count as nothing along a line
constexpr float kMoment = 1e-4f;  // the same on the clock

// One line of the scene, on the endless line that it lies on. It carries what is compared, because
// lines that lie together in place are far apart in the scene's arrays.
struct OnLine {
  std::uint64_t key = 0;         // of the endless line and the material
  std::uint32_t line : 31 = 0;   // of all stretches, one after the other
  std::uint32_t turned : 1 = 0;  // its second end comes first
  std::uint32_t element = 0;
  std::uint32_t normalA = 0, normalB = 0;  // as in EdgeVertex
  float from = 0, to = 0;                  // along the endless line
};

// A stretch of a line, as fractions of it, along which another element runs on flush.
struct Cover {
  std::uint32_t line, neighbour;
  float from, to;
};

bool seamless(model::Material material) {
  using enum model::Material;
  switch (material) {
    case Timber:
    case Plywood:
    case Steel:
    case Glass:
    case Membrane:
      return false;
    default:
      return true;
  }
}

std::uint64_t mixed(std::uint64_t h, double value, double perMetre) {
  // Off the half millimetres on which measures lie, so that rounding goes one way for all; far over
  // nothing, so that cutting off the fraction rounds down.
  constexpr double kOver = 1 << 30;
  const auto cell = static_cast<std::int64_t>(value * perMetre + (kOver + 0.3425));
  h = (h ^ static_cast<std::uint64_t>(cell)) * 0x9e3779b97f4a7c15ull;
  return h ^ (h >> 29);
}

OnLine placed(const EdgeVertex& start, const EdgeVertex& end, std::uint32_t line,
              model::Material material) {
  const glm::vec3 &a = start.position, &b = end.position;
  OnLine on;
  on.line = line & 0x7fffffffu;
  on.element = start.element;
  on.normalA = start.normalA;
  on.normalB = start.normalB;
  glm::vec3 d = glm::normalize(b - a);
  constexpr float kFlat = 1e-4f;
  const bool turned = d.x < -kFlat || (std::abs(d.x) <= kFlat &&
                                       (d.y < -kFlat || (std::abs(d.y) <= kFlat && d.z < 0)));
  on.turned = turned ? 1 : 0;
  if (turned) d = -d;
  const float alongA = glm::dot(a, d), alongB = glm::dot(b, d);
  on.from = std::min(alongA, alongB);
  on.to = std::max(alongA, alongB);
  const glm::vec3 foot = a - d * alongA;
  on.key = static_cast<std::uint64_t>(material);
  for (int i = 0; i < 3; ++i) on.key = mixed(mixed(on.key, d[i], 100), foot[i], 2500);
  return on;
}

int dot(std::uint32_t a, std::uint32_t b) {
  int sum = 0;
  for (const int shift : {0, 8, 16})
    sum += static_cast<std::int8_t>(a >> shift & 255) * static_cast<std::int8_t>(b >> shift & 255);
  return sum;
}

// Whether the line is lost between the two: one pair of faces looks the same way and the other pair
// is face to face, so that a face runs on; or both pairs are, so that the line is inside.
bool flush(const OnLine& x, const OnLine& y) {
  constexpr int kAlike = 99 * 127 * 127 / 100;
  const auto lost = [](std::uint32_t a, std::uint32_t b, std::uint32_t c, std::uint32_t d) {
    return dot(c, d) < -kAlike && std::abs(dot(a, b)) > kAlike;
  };
  return lost(x.normalA, y.normalA, x.normalB, y.normalB) ||
         lost(x.normalB, y.normalB, x.normalA, y.normalA) ||
         lost(x.normalA, y.normalB, x.normalB, y.normalA) ||
         lost(x.normalB, y.normalA, x.normalA, y.normalB);
}

void addCovers(const OnLine& x, const OnLine& y, std::vector<Cover>& covers) {
  if (x.element == y.element || !flush(x, y)) return;
  const float from = std::max(x.from, y.from), to = std::min(x.to, y.to);
  const auto add = [&](const OnLine& on, std::uint32_t neighbour) {
    const float length = on.to - on.from;
    float f = from - on.from < kTouch ? 0 : (from - on.from) / length;
    float t = on.to - to < kTouch ? 1 : (to - on.from) / length;
    if (on.turned) f = 1 - f, t = 1 - t, std::swap(f, t);
    covers.push_back({on.line, neighbour, f, t});
  };
  add(x, y.element);
  add(y, x.element);
}

// Lines shared out by the endless line they lie on, and covers by the line that is covered. As many
// parts on every machine, so that all is put together in the same order.
constexpr size_t kParts = 16;

struct Sharing {
  std::array<std::vector<OnLine>, kParts> lines;  // by the top bits of their keys
  std::uint32_t firstLine = 0;                    // of the stretch
};

void share(const model::Works& works, const LineStretch& stretch, Sharing& sharing) {
  for (auto& part : sharing.lines) part.reserve(stretch.edges.size() / 2 / kParts * 2);
  for (size_t i = 0; i + 1 < stretch.edges.size(); i += 2) {
    const model::Material material = works.elements[stretch.edges[i].element].material;
    if (!seamless(material)) continue;
    const OnLine on = placed(stretch.edges[i], stretch.edges[i + 1],
                             sharing.firstLine + static_cast<std::uint32_t>(i / 2), material);
    sharing.lines[on.key >> 60].push_back(on);
  }
}

// The covers among the lines of one part.
std::vector<Cover> findCovers(const std::vector<Sharing>& stretches, size_t part) {
  std::vector<OnLine> lines;
  size_t count = 0;
  for (const Sharing& stretch : stretches) count += stretch.lines[part].size();
  lines.reserve(count);
  for (const Sharing& stretch : stretches)
    lines.insert(lines.end(), stretch.lines[part].begin(), stretch.lines[part].end());
  // Lines that lie on one endless line come together, in order along it.
  const size_t buckets = std::bit_ceil(count + 1);
  sortInBuckets(
      lines, buckets, [buckets](const OnLine& on) { return on.key & (buckets - 1); },
      [](const OnLine& a, const OnLine& b) {
        return a.key != b.key     ? a.key < b.key
               : a.from != b.from ? a.from < b.from
                                  : a.line < b.line;
      });
  std::vector<Cover> covers;
  covers.reserve(lines.size());
  for (size_t i = 0; i < lines.size(); ++i) {
    for (size_t j = i + 1;
         j < lines.size() && lines[j].key == lines[i].key && lines[j].from < lines[i].to - kTouch;
         ++j)
      addCovers(lines[i], lines[j], covers);
  }
  return covers;
}

// When a stretch of line is seen; the two ends have their own moments.
struct Seen {
  float from[2], to[2];
  bool ever() const { return to[0] > from[0] + kMoment || to[1] > from[1] + kMoment; }
};

// Takes the time during which the neighbour stands out of each of the times.
void subtract(std::vector<Seen>& times, std::vector<Seen>& left, const ElementRange& neighbour,
              const glm::vec3 (&ends)[2]) {
  left.clear();
  for (const Seen& seen : times) {
    Seen before = seen, after = seen;
    for (int k = 0; k < 2; ++k) {
      before.to[k] = std::min(seen.to[k], neighbour.placed.at(ends[k]));
      after.from[k] = std::max(seen.from[k], neighbour.removed.at(ends[k]));
    }
    if (before.ever()) left.push_back(before);
    if (after.ever()) left.push_back(after);
  }
  std::swap(times, left);
}

// Scratch space, kept between lines.
struct Scratch {
  std::vector<float> cuts;
  std::vector<Seen> times, left;
};

void rewrite(const EdgeVertex& a, const EdgeVertex& b, std::span<const Cover> covers,
             const std::vector<ElementRange>& elements, Scratch& scratch,
             RawVector<EdgeVertex>& out) {
  std::vector<float>& cuts = scratch.cuts;
  cuts.assign({0, 1});
  for (const Cover& c : covers) cuts.insert(cuts.end(), {c.from, c.to});
  std::sort(cuts.begin(), cuts.end());
  for (size_t i = 0; i + 1 < cuts.size(); ++i) {
    const float f[2] = {cuts[i], cuts[i + 1]};
    if (f[1] - f[0] < 1e-5f) continue;
    const glm::vec3 ends[2] = {glm::mix(a.position, b.position, f[0]),
                               glm::mix(a.position, b.position, f[1])};
    Seen whole;
    for (int k = 0; k < 2; ++k) {
      whole.from[k] = glm::mix(a.appears, b.appears, f[k]);
      whole.to[k] = a.goes == b.goes ? a.goes : glm::mix(a.goes, b.goes, f[k]);
    }
    std::vector<Seen>& times = scratch.times;
    times.assign(1, whole);
    for (const Cover& c : covers) {
      if (c.from <= f[0] + 1e-5f && c.to >= f[1] - 1e-5f)
        subtract(times, scratch.left, elements[c.neighbour], ends);
    }
    for (const Seen& seen : times) {
      for (int k = 0; k < 2; ++k) {
        EdgeVertex& end = out.emplace_back(a);
        end.position = ends[k];
        end.appears = seen.from[k];
        end.goes = seen.to[k];
      }
    }
  }
}

// The stretch's lines without what covers take of them.
void rewrite(LineStretch& stretch, std::vector<Cover> covers, std::uint32_t firstLine,
             Scene& scene) {
  sortInBuckets(
      covers, std::bit_ceil(stretch.edges.size() / 2 + 1),
      [firstLine](const Cover& c) { return c.line - firstLine; },
      [](const Cover& a, const Cover& b) {
        return a.from != b.from             ? a.from < b.from
               : a.neighbour != b.neighbour ? a.neighbour < b.neighbour
                                            : a.to < b.to;
      });
  RawVector<EdgeVertex> edges;
  edges.reserve(stretch.edges.size() + stretch.edges.size() / 4);
  Scratch scratch;
  size_t next = 0;
  for (size_t i = stretch.from; i < stretch.to; ++i) {
    ElementRange& range = scene.elements[scene.order[i]];
    const auto first = static_cast<std::uint32_t>(edges.size());
    for (std::uint32_t k = range.firstEdge; k < range.firstEdge + range.edgeCount; k += 2) {
      const size_t from = next;
      while (next < covers.size() && covers[next].line == firstLine + k / 2) ++next;
      const EdgeVertex& a = stretch.edges[k];
      if (next == from)
        edges.insert(edges.end(), &a, &a + 2);
      else
        rewrite(a, stretch.edges[k + 1], {&covers[from], next - from}, scene.elements, scratch,
                edges);
    }
    range.firstEdge = first;
    range.edgeCount = static_cast<std::uint32_t>(edges.size()) - first;
  }
  stretch.edges = std::move(edges);
}

}  // namespace

void joinLines(const model::Works& works, std::vector<LineStretch> stretches, Scene& scene) {
  std::vector<Sharing> shared(stretches.size());
  std::uint32_t lines = 0;
  for (size_t s = 0; s < stretches.size(); ++s) {
    shared[s].firstLine = lines;
    lines += static_cast<std::uint32_t>(stretches[s].edges.size() / 2);
  }
  model::inParallel(stretches.size(), [&](size_t s) {
    Sharing own;
    own.firstLine = shared[s].firstLine;
    share(works, stretches[s], own);
    shared[s] = std::move(own);
  });
  std::vector<std::vector<Cover>> found(kParts);
  model::inParallel(kParts, [&](size_t part) { found[part] = findCovers(shared, part); });
  model::inParallel(stretches.size(), [&](size_t s) {
    const std::uint32_t first = shared[s].firstLine;
    const std::uint32_t last = first + static_cast<std::uint32_t>(stretches[s].edges.size() / 2);
    std::vector<Cover> own;
    for (const auto& part : found)
      std::copy_if(part.begin(), part.end(), std::back_inserter(own),
                   [&](const Cover& c) { return c.line >= first && c.line < last; });
    rewrite(stretches[s], std::move(own), first, scene);
  });
  std::vector<std::uint32_t> starts{0};
  for (const LineStretch& stretch : stretches)
    starts.push_back(starts.back() + static_cast<std::uint32_t>(stretch.edges.size()));
  scene.edges.resize(starts.back());
  model::inParallel(stretches.size(), [&](size_t s) {
    std::copy(stretches[s].edges.begin(), stretches[s].edges.end(),
              scene.edges.begin() + starts[s]);
    for (size_t i = stretches[s].from; i < stretches[s].to; ++i)
      scene.elements[scene.order[i]].firstEdge += starts[s];
  });
}

}  // namespace viewer
