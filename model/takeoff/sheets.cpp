#include "model/takeoff/sheets.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include <glm/geometric.hpp>

namespace model {

namespace {

constexpr double kGives = 0.0015;  // a board is pressed or cut by so little without being counted
constexpr double kSliver = 0.020;  // a smaller piece is cut from what falls off others

size_t rootOf(std::vector<size_t>& parent, size_t i) {
  while (parent[i] != i) i = parent[i] = parent[parent[i]];
  return i;
}

}  // namespace

std::vector<PieceSize> pieceSizes(const Solid& solid, const Vec3& along) {
  std::vector<size_t> parent(solid.points.size());
  std::iota(parent.begin(), parent.end(), size_t{0});
  for (const auto& [a, b, c] : solid.triangles) {
    parent[rootOf(parent, a)] = rootOf(parent, b);
    parent[rootOf(parent, b)] = rootOf(parent, c);
  }
  struct Extent {
    double s0 = 1e300, s1 = -1e300, z0 = 1e300, z1 = -1e300;
  };
  std::map<size_t, Extent> pieces;
  for (size_t i = 0; i < solid.points.size(); ++i) {
    Extent& e = pieces[rootOf(parent, i)];
    const double s = glm::dot(solid.points[i], along), z = solid.points[i].z;
    e = {std::min(e.s0, s), std::max(e.s1, s), std::min(e.z0, z), std::max(e.z1, z)};
  }
  std::vector<PieceSize> sizes;
  for (const auto& [root, e] : pieces) sizes.push_back({e.s1 - e.s0, e.z1 - e.z0});
  return sizes;
}

double sheetsFor(std::vector<PieceSize> pieces, double length, double height) {
  if (length <= 0 || height <= 0) return 0;
  std::erase_if(pieces,
                [](const PieceSize& p) { return p.length < kSliver || p.height < kSliver; });
  std::sort(pieces.begin(), pieces.end(), [](const PieceSize& a, const PieceSize& b) {
    return a.height != b.height ? a.height > b.height : a.length > b.length;
  });
  struct Strip {
    double height = 0, left = 0;
  };
  std::vector<Strip> strips;
  std::vector<double> boards;  // height left on each
  double large = 0;
  for (const PieceSize& piece : pieces) {
    const double across = std::ceil((piece.length - kGives) / length);
    const double up = std::ceil((piece.height - kGives) / height);
    if (across > 1 || up > 1) {
      large += across * up;
      continue;
    }
    const auto strip = std::find_if(strips.begin(), strips.end(), [&](const Strip& s) {
      return s.height > piece.height - kGives && s.left > piece.length - kGives;
    });
    if (strip != strips.end()) {
      strip->left -= piece.length;
      continue;
    }
    auto board = std::find_if(boards.begin(), boards.end(),
                              [&](double left) { return left > piece.height - kGives; });
    if (board == boards.end()) board = boards.insert(boards.end(), height);
    *board -= piece.height;
    strips.push_back({piece.height, length - piece.length});
  }
  return static_cast<double>(boards.size()) + large;
}

}  // namespace model
