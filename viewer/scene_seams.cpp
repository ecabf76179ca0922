#include "viewer/scene_seams.h"

#include <algorithm>
#include <bit>
#include <cmath>

#include <glm/geometric.hpp>

#include "viewer/sort_in_buckets.h"

namespace viewer {

namespace {

constexpr float kTouch = 0.001f;  // metres that count as nothing along a line
constexpr float kMoment = 1e-4f;  // the same on the clock

// One line of the scene, on the endless line that it lies on. It carries what is compared, because
// lines that lie together in place are far apart in the scene's arrays.
struct OnLine {
  std::uint64_t key = 0;
  std::uint32_t line = 0;  // of scene.edges, counted in pairs
  std::uint32_t element = 0, material = 0;
  std::uint32_t normalA = 0, normalB = 0;  // as in EdgeVertex
  float from = 0, to = 0;                  // along the endless line
  bool turned = false;                     // its second end comes first
};

// A stretch of a line, as fractions of it, along which another element runs on flush.
struct Cover {
  std::uint32_t line, neighbour;
  float from, to;
};

bool seamless(std::uint32_t material) {
  using enum model::Material;
  switch (static_cast<model::Material>(material & ~kCutFace)) {
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

std::uint64_t mixed(std::uint64_t h, float value, float perMetre) {
  // Off the half millimetres on which measures lie, so that rounding goes one way for all.
  const auto cell = static_cast<std::int64_t>(std::floor(value * perMetre + 0.3425f));
  h = (h ^ static_cast<std::uint64_t>(cell)) * 0x9e3779b97f4a7c15ull;
  return h ^ (h >> 29);
}

OnLine placed(const Scene& scene, std::uint32_t line, std::uint32_t material) {
  const EdgeVertex& edge = scene.edges[line * 2];
  const glm::vec3 &a = edge.position, &b = scene.edges[line * 2 + 1].position;
  OnLine on;
  on.line = line;
  on.element = edge.element;
  on.material = material;
  on.normalA = edge.normalA;
  on.normalB = edge.normalB;
  glm::vec3 d = glm::normalize(b - a);
  constexpr float kFlat = 1e-4f;
  on.turned = d.x < -kFlat ||
              (std::abs(d.x) <= kFlat && (d.y < -kFlat || (std::abs(d.y) <= kFlat && d.z < 0)));
  if (on.turned) d = -d;
  const float alongA = glm::dot(a, d), alongB = glm::dot(b, d);
  on.from = std::min(alongA, alongB);
  on.to = std::max(alongA, alongB);
  const glm::vec3 foot = a - d * alongA;
  for (int i = 0; i < 3; ++i) on.key = mixed(mixed(on.key, d[i], 100), foot[i], 2500);
  return on;
}

glm::vec3 unpacked(std::uint32_t bytes) {
  const auto part = [bytes](int shift) {
    return static_cast<float>(static_cast<std::int8_t>(bytes >> shift & 255)) / 127.0f;
  };
  return {part(0), part(8), part(16)};
}

// Whether the line is lost between the two: one pair of faces looks the same way and the other pair
// is face to face, so that a face runs on; or both pairs are, so that the line is inside.
bool flush(const OnLine& x, const OnLine& y) {
  const glm::vec3 xs[2] = {unpacked(x.normalA), unpacked(x.normalB)};
  const glm::vec3 ys[2] = {unpacked(y.normalA), unpacked(y.normalB)};
  for (int i = 0; i < 2; ++i) {
    for (int j = 0; j < 2; ++j) {
      if (std::abs(glm::dot(xs[i], ys[j])) > 0.99f && glm::dot(xs[1 - i], ys[1 - j]) < -0.99f)
        return true;
    }
  }
  return false;
}

void addCovers(const OnLine& x, const OnLine& y, std::vector<Cover>& covers) {
  if (x.element == y.element || x.material != y.material || !flush(x, y)) return;
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

// Lines that lie on one endless line come together, in order along it.
std::vector<OnLine> linesToCompare(const Scene& scene, const std::vector<std::uint32_t>& material) {
  std::vector<OnLine> lines;
  lines.reserve(scene.edges.size() / 2);
  for (std::uint32_t i = 0; i < scene.edges.size() / 2; ++i) {
    const std::uint32_t own = material[scene.edges[i * 2].element];
    if (seamless(own)) lines.push_back(placed(scene, i, own));
  }
  const size_t buckets = std::bit_ceil(lines.size() + 1);
  sortInBuckets(
      lines, buckets, [buckets](const OnLine& on) { return on.key & (buckets - 1); },
      [](const OnLine& a, const OnLine& b) {
        return a.key != b.key     ? a.key < b.key
               : a.from != b.from ? a.from < b.from
                                  : a.line < b.line;
      });
  return lines;
}

std::vector<Cover> findCovers(const Scene& scene, const std::vector<std::uint32_t>& material) {
  const std::vector<OnLine> lines = linesToCompare(scene, material);
  std::vector<Cover> covers;
  covers.reserve(lines.size());
  for (size_t i = 0; i < lines.size(); ++i) {
    for (size_t j = i + 1;
         j < lines.size() && lines[j].key == lines[i].key && lines[j].from < lines[i].to - kTouch;
         ++j)
      addCovers(lines[i], lines[j], covers);
  }
  sortInBuckets(
      covers, std::bit_ceil(scene.edges.size() / 2 + 1), [](const Cover& c) { return c.line; },
      [](const Cover& a, const Cover& b) {
        return a.from != b.from ? a.from < b.from : a.neighbour < b.neighbour;
      });
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

void rewrite(const Scene& scene, std::uint32_t line, const Cover* first, const Cover* last,
             Scratch& scratch, std::vector<EdgeVertex>& out) {
  const EdgeVertex &a = scene.edges[line * 2], &b = scene.edges[line * 2 + 1];
  std::vector<float>& cuts = scratch.cuts;
  cuts.assign({0, 1});
  for (const Cover* c = first; c != last; ++c) cuts.insert(cuts.end(), {c->from, c->to});
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
    for (const Cover* c = first; c != last; ++c) {
      if (c->from <= f[0] + 1e-5f && c->to >= f[1] - 1e-5f)
        subtract(times, scratch.left, scene.elements[c->neighbour], ends);
    }
    for (const Seen& seen : times) {
      for (int k = 0; k < 2; ++k)
        out.push_back({ends[k], seen.from[k], seen.to[k], a.element, a.normalA, a.normalB});
    }
  }
}

}  // namespace

void hideSeams(Scene& scene) {
  std::vector<std::uint32_t> material(scene.elements.size(), 0);
  for (size_t i = 0; i < scene.elements.size(); ++i) {
    const ElementRange& range = scene.elements[i];
    if (range.indexCount)
      material[i] = scene.vertices[scene.indices[range.firstIndex]].material & ~kCutFace;
  }
  const std::vector<Cover> covers = findCovers(scene, material);
  std::vector<EdgeVertex> edges;
  edges.reserve(scene.edges.size() + scene.edges.size() / 4);
  Scratch scratch;
  const Cover* next = covers.data();
  const Cover* const end = next + covers.size();
  for (const std::uint32_t e : scene.order) {
    ElementRange& range = scene.elements[e];
    const auto first = static_cast<std::uint32_t>(edges.size());
    for (std::uint32_t i = 0; i < range.edgeCount; i += 2) {
      const std::uint32_t line = (range.firstEdge + i) / 2;
      const Cover* last = next;
      while (last != end && last->line == line) ++last;
      if (last == next)
        edges.insert(edges.end(), {scene.edges[line * 2], scene.edges[line * 2 + 1]});
      else
        rewrite(scene, line, next, last, scratch, edges);
      next = last;
    }
    range.firstEdge = first;
    range.edgeCount = static_cast<std::uint32_t>(edges.size()) - first;
  }
  scene.edges = std::move(edges);
}

}  // namespace viewer
