#include "viewer/own_size.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <optional>
#include <vector>

#include <glm/geometric.hpp>

namespace viewer {
namespace {

using model::ElementKind;
using model::Vec2;
using model::Vec3;

struct Span {
  double low = 1e300, high = -1e300;
  void add(double at) { low = std::min(low, at), high = std::max(high, at); }
  double length() const { return std::max(0.0, high - low); }
};

double along(const model::Solid& solid, const Vec3& direction) {
  Span span;
  for (const Vec3& p : solid.points) span.add(glm::dot(p, direction));
  return span.length();
}

double turn(const Vec2& a, const Vec2& b, const Vec2& c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

// The outermost points, anticlockwise: each half from left to right and back.
std::vector<Vec2> hullOf(std::vector<Vec2> points) {
  std::sort(points.begin(), points.end(),
            [](const Vec2& a, const Vec2& b) { return a.x < b.x || (a.x == b.x && a.y < b.y); });
  std::vector<Vec2> hull;
  for (int half = 0; half < 2; ++half) {
    const size_t start = hull.size();
    for (const Vec2& p : points) {
      while (hull.size() >= start + 2 && turn(hull[hull.size() - 2], hull.back(), p) <= 0)
        hull.pop_back();
      hull.push_back(p);
    }
    if (!hull.empty()) hull.pop_back();  // the other half begins with it
    std::reverse(points.begin(), points.end());
  }
  return hull;
}

struct Rectangle {
  double shorter = 0, longer = 0;
};

// The smallest rectangle has a side on the hull.
Rectangle smallestRectangle(const std::vector<Vec2>& points) {
  const std::vector<Vec2> hull = hullOf(points);
  Rectangle best;
  double least = 1e300;
  for (size_t i = 0; i < hull.size(); ++i) {
    const Vec2 side = hull[(i + 1) % hull.size()] - hull[i];
    if (glm::length(side) < 1e-6) continue;
    const Vec2 u = glm::normalize(side), v{-u.y, u.x};
    Span a, b;
    for (const Vec2& p : hull) a.add(glm::dot(p, u)), b.add(glm::dot(p, v));
    if (a.length() * b.length() >= least) continue;
    least = a.length() * b.length();
    best = {std::min(a.length(), b.length()), std::max(a.length(), b.length())};
  }
  return best;
}

// Directions that faces look in, both ways as one, with the area that looks there; largest first.
struct Facing {
  Vec3 normal;
  double area;
};

std::vector<Facing> facings(const model::Solid& solid) {
  constexpr double kSame = 0.9998;  // a degree
  std::vector<Facing> all;
  for (const auto& t : solid.triangles) {
    const Vec3 square = glm::cross(solid.points[t[1]] - solid.points[t[0]],
                                   solid.points[t[2]] - solid.points[t[0]]);
    const double area = glm::length(square) / 2;
    if (area < 1e-9) continue;
    const Vec3 normal = square / (2 * area);
    const auto same = std::find_if(all.begin(), all.end(), [&](const Facing& f) {
      return std::abs(glm::dot(f.normal, normal)) > kSame;
    });
    if (same == all.end())
      all.push_back({normal, area});
    else
      same->area += area;
  }
  std::sort(all.begin(), all.end(),
            [](const Facing& a, const Facing& b) { return a.area > b.area; });
  return all;
}

// Over the rectangle on plan.
OwnSize onPlan(const model::Solid& solid, SizeAxes axes) {
  std::vector<Vec2> plan;
  for (const Vec3& p : solid.points) plan.emplace_back(p.x, p.y);
  const Rectangle rectangle = smallestRectangle(plan);
  return {axes, rectangle.longer, rectangle.shorter, along(solid, {0, 0, 1})};
}

// A bar lies square to the two ways in which most of its faces look.
std::optional<OwnSize> asBar(const model::Solid& solid) {
  const auto faces = facings(solid);
  if (faces.empty()) return std::nullopt;
  const auto other = std::find_if(faces.begin() + 1, faces.end(), [&](const Facing& f) {
    return std::abs(glm::dot(f.normal, faces.front().normal)) < 0.5;
  });
  if (other == faces.end()) return std::nullopt;
  const Vec3 way = glm::normalize(glm::cross(faces.front().normal, other->normal));
  const Vec3 u = faces.front().normal, v = glm::cross(way, u);
  std::vector<Vec2> section;
  for (const Vec3& p : solid.points) section.emplace_back(glm::dot(p, u), glm::dot(p, v));
  const Rectangle sides = smallestRectangle(section);
  const double length = along(solid, way), box = sides.shorter * sides.longer * length;
  // Several in one, or bent round a corner: that is no bar.
  if (box <= 0 || length < sides.longer || model::volume(solid) < 0.5 * box) return std::nullopt;
  return OwnSize{SizeAxes::Bar, sides.shorter, sides.longer, length};
}

std::optional<OwnSize> asSlope(const model::Solid& solid) {
  const auto faces = facings(solid);
  if (faces.empty() || std::abs(faces.front().normal.z) > 0.9999) return std::nullopt;
  const Vec3 normal = faces.front().normal;
  const Vec3 eaves = glm::normalize(glm::cross(normal, Vec3(0, 0, 1)));
  return OwnSize{SizeAxes::Slope, along(solid, eaves), along(solid, glm::cross(normal, eaves)),
                 along(solid, normal)};
}

SizeAxes axesOf(ElementKind kind) {
  switch (kind) {
    case ElementKind::Foundation:
    case ElementKind::OuterLeaf:
    case ElementKind::InnerLeaf:
    case ElementKind::CavityFill:
    case ElementKind::CavityInsulation:
    case ElementKind::CavityCloser:
    case ElementKind::CellarWall:
    case ElementKind::Core:
    case ElementKind::DampCourse:
    case ElementKind::CavityTray:
    case ElementKind::CavityBarrier:
    case ElementKind::JointFiller:
    case ElementKind::StarterStrip:
    case ElementKind::Lintel:
    case ElementKind::Padstone:
    case ElementKind::MasonrySill:
    case ElementKind::AirBrick:
    case ElementKind::Formwork:
      return SizeAxes::Wall;
    case ElementKind::Window:
    case ElementKind::Door:
      return SizeAxes::Opening;
    case ElementKind::RoofCovering:
      return SizeAxes::Slope;
    case ElementKind::Joist:
    case ElementKind::WallPlate:
    case ElementKind::Rafter:
    case ElementKind::FasciaBoard:
    case ElementKind::BargeBoard:
    case ElementKind::StairString:
    case ElementKind::StairTread:
    case ElementKind::StairRiser:
    case ElementKind::Newel:
    case ElementKind::Handrail:
    case ElementKind::Peg:
    case ElementKind::LevelPin:
      return SizeAxes::Bar;
    case ElementKind::Blinding:
    case ElementKind::CellarSlab:
    case ElementKind::GroundSlab:
    case ElementKind::BeamFloor:
    case ElementKind::FloorInsulation:
    case ElementKind::Screed:
    case ElementKind::Deck:
      return SizeAxes::Layer;
    default:
      return SizeAxes::Plan;
  }
}

// "102.5": tenths matter to a leaf or a board, not to the length of a wall.
std::string millimetres(double metres) {
  constexpr double kThin = 0.3;
  char text[32];
  const double tenths = std::round(metres * 10000);
  const bool whole = metres >= kThin || std::abs(std::remainder(tenths, 10)) < 0.5;
  std::snprintf(text, sizeof text, whole ? "%.0f" : "%.1f", whole ? metres * 1000 : tenths / 10);
  return text;
}

}  // namespace

OwnSize ownSize(const model::SettingOut& settingOut, const model::Element& element) {
  const SizeAxes axes = axesOf(element.kind);
  const model::Solid& solid = element.solid;
  if (axes == SizeAxes::Wall || axes == SizeAxes::Opening) {
    const auto index = settingOut.wallNamed(element.wall);
    if (!index) return onPlan(solid, SizeAxes::Plan);
    const model::WallLine& wall = settingOut.walls[*index];
    return {axes, along(solid, {wall.along, 0}), along(solid, {wall.outward, 0}),
            along(solid, {0, 0, 1})};
  }
  if (axes == SizeAxes::Slope)
    if (const auto slope = asSlope(solid)) return *slope;
  if (axes == SizeAxes::Bar)
    if (const auto bar = asBar(solid)) return *bar;
  return onPlan(solid, axes == SizeAxes::Layer ? axes : SizeAxes::Plan);
}

std::string sizeWords(const OwnSize& size) {
  const std::string a = millimetres(size.a), b = millimetres(size.b), c = millimetres(size.c);
  switch (size.axes) {
    case SizeAxes::Wall:
      return "Length " + a + " x thickness " + b + " x height " + c + " mm";
    case SizeAxes::Opening:
      return "Width " + a + " x height " + c + " mm, " + b + " through the wall";
    case SizeAxes::Slope:
      return "Along the eaves " + a + " x up the slope " + b + " mm, " + c + " thick";
    case SizeAxes::Bar:
      return "Section " + a + " x " + b + " mm, length " + c + " mm";
    case SizeAxes::Layer:
      return "Over all on plan " + a + " x " + b + " mm, " + c + " thick";
    case SizeAxes::Plan:
      break;
  }
  return "Over all on plan " + a + " x " + b + " mm, height " + c + " mm";
}

}  // namespace viewer
