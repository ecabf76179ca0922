#include "model/bond/corbel_course.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace model {

namespace {

constexpr double kSame = 0.003;        // metres: nobody cuts less
constexpr double kLeastPiece = 0.040;  // across: a thinner one is no brick

using Span = std::array<double, 2>;

// Headers of one width with joints that give; else two of them are cut, alike, in the middle.
std::vector<Span> alongOf(const SolidSizes& sizes, double length) {
  const double module = sizes.half(), all = length + sizes.joint;
  const int rounded = std::max(1, static_cast<int>(std::lround(all / module)));
  const double over = all - rounded * module;
  const bool gives = over < (rounded - 1) * (sizes.most - sizes.joint) + 1e-9 &&
                     -over < (rounded - 1) * (sizes.joint - sizes.least) + 1e-9;
  std::vector<double> modules(static_cast<size_t>(rounded), module);
  double joint = sizes.joint;
  if (gives && rounded > 1) {
    joint += over / (rounded - 1);
    for (double& m : modules) m += joint - sizes.joint;
  } else if (rounded > 1) {
    const size_t first = (modules.size() - 1) / 2;
    modules[first] += over / 2;
    modules[first + 1] += over / 2;
  } else {
    modules[0] = all;
  }
  // One that had to grow past a header is too long: three share what two had.
  if (!gives && rounded > 1 && over > kSame) {
    const size_t first = (modules.size() - 1) / 2;
    const double share = (modules[first] + modules[first + 1]) / 3;
    modules[first] = modules[first + 1] = share;
    modules.insert(modules.begin() + static_cast<std::ptrdiff_t>(first), share);
  }
  std::vector<Span> spans;
  double at = 0;
  for (const double m : modules) {
    spans.push_back({at, at + m - joint});
    at += m;
  }
  spans.back()[1] = length;
  return spans;
}

// Whole bricks and what is left; where that would be too thin, the last two share their place.
std::vector<Span> acrossOf(const SolidSizes& sizes, double width, bool closedInFront) {
  const double module = sizes.brick + sizes.joint;
  const int whole = static_cast<int>((width + sizes.joint + kSame) / module);
  std::vector<double> pieces(static_cast<size_t>(whole), sizes.brick);
  const double rest = width - whole * module;
  if (whole == 0) {
    pieces.push_back(width);
  } else if (rest >= kLeastPiece) {
    pieces.push_back(rest);
  } else if (rest > kSame - sizes.joint) {  // less is in the joints
    const double both = width - (whole - 1) * module - sizes.joint;
    pieces.back() = both / 2;
    pieces.push_back(both / 2);
  }
  if (closedInFront) std::reverse(pieces.begin(), pieces.end());
  double bricks = 0;
  for (const double piece : pieces) bricks += piece;
  const double joint =
      pieces.size() > 1 ? (width - bricks) / static_cast<double>(pieces.size() - 1) : 0;
  std::vector<Span> spans;
  double at = 0;
  for (const double piece : pieces) {
    spans.push_back({at, at + piece});
    at += piece + joint;
  }
  spans.back()[1] = width;
  return spans;
}

Piece pieceOf(const SolidSizes& sizes, double along, double across) {
  const double half = sizes.half() - sizes.joint;
  const auto is = [](double a, double b) { return std::fabs(a - b) < kSame; };
  if (!is(along, half)) return Piece::Cut;
  if (is(across, sizes.brick)) return Piece::Whole;
  if (is(across, (sizes.brick + half) / 2)) return Piece::ThreeQuarter;
  return is(across, half) ? Piece::Half : Piece::Cut;
}

}  // namespace

std::vector<SolidPiece> layCorbelCourse(const SolidSizes& sizes, double length, double width,
                                        bool closedInFront) {
  std::vector<SolidPiece> pieces;
  for (const Span& s : alongOf(sizes, length))
    for (const Span& d : acrossOf(sizes, width, closedInFront)) {
      SolidPiece piece;
      piece.s0 = s[0], piece.s1 = s[1];
      piece.d0 = d[0], piece.d1 = d[1];
      piece.piece = pieceOf(sizes, s[1] - s[0], d[1] - d[0]);
      piece.header = d[1] - d[0] > s[1] - s[0];
      pieces.push_back(piece);
    }
  return pieces;
}

}  // namespace model
