#include "tests/support/cgal_roof.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/create_straight_skeleton_2.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdio>
#include <stdexcept>

namespace model::test {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Skeleton = CGAL::Straight_skeleton_2<Kernel>;

// The edge of the outline that a face stands on, or the number of edges when there is none.
size_t edgeUnder(Skeleton::Halfedge_const_handle first, const Polygon& outline) {
  auto side = first;
  do {
    const auto a = side->opposite()->vertex()->point(), b = side->vertex()->point();
    for (size_t i = 0; i < outline.size(); ++i)
      if (outline[i] == Vec2{a.x(), a.y()} &&
          outline[(i + 1) % outline.size()] == Vec2{b.x(), b.y()})
        return i;
    side = side->next();
  } while (side != first);
  return outline.size();
}

// Areas, then three numbers a node; empty when CGAL gives up.
std::vector<double> solve(const Polygon& outline) {
  std::vector<Kernel::Point_2> points;
  for (const Vec2& p : outline) points.emplace_back(p.x, p.y);
  const auto skeleton =
      CGAL::create_interior_straight_skeleton_2(points.begin(), points.end(), Kernel());
  if (!skeleton) return {};
  std::vector<double> numbers(outline.size(), 0.0);
  for (auto face = skeleton->faces_begin(); face != skeleton->faces_end(); ++face) {
    Polygon plan;
    const Skeleton::Halfedge_const_handle first = face->halfedge();
    auto side = first;
    do {
      plan.emplace_back(side->vertex()->point().x(), side->vertex()->point().y());
      side = side->next();
    } while (side != first);
    const size_t edge = edgeUnder(first, outline);
    if (edge < outline.size()) numbers[edge] += signedArea(plan);
  }
  for (auto v = skeleton->vertices_begin(); v != skeleton->vertices_end(); ++v)
    if (v->is_skeleton())
      numbers.insert(numbers.end(), {v->point().x(), v->point().y(), v->time()});
  return numbers;
}

[[noreturn]] void solveInto(int pipe, const std::vector<Polygon>& outlines, size_t first) {
  FILE* out = fdopen(pipe, "wb");
  for (size_t i = first; i < outlines.size(); ++i) {
    const std::vector<double> numbers = solve(outlines[i]);
    const size_t count = numbers.size();
    fwrite(&count, sizeof count, 1, out);
    fwrite(numbers.data(), sizeof(double), count, out);
    fflush(out);
  }
  fclose(out);
  _exit(0);
}

std::optional<CgalRoof> roofFrom(const std::vector<double>& numbers, size_t edges) {
  if (numbers.size() < edges || edges == 0) return std::nullopt;
  CgalRoof roof;
  roof.areas.assign(numbers.begin(), numbers.begin() + std::ptrdiff_t(edges));
  for (size_t k = edges; k + 2 < numbers.size(); k += 3)
    roof.tops.push_back({numbers[k], numbers[k + 1], numbers[k + 2]});
  return roof;
}

}  // namespace

std::vector<std::optional<CgalRoof>> cgalRoofs(const std::vector<Polygon>& outlines) {
  std::vector<std::optional<CgalRoof>> roofs;
  while (roofs.size() < outlines.size()) {
    int ends[2];
    if (pipe(ends) != 0) throw std::runtime_error("no pipe to CGAL");
    fflush(nullptr);
    const pid_t child = fork();
    if (child < 0) throw std::runtime_error("no process for CGAL");
    if (child == 0) {
      close(ends[0]);
      // A crash here is an answer; it needs no report.
      if (!freopen("/dev/null", "w", stderr)) _exit(1);
      solveInto(ends[1], outlines, roofs.size());
    }
    close(ends[1]);
    FILE* in = fdopen(ends[0], "rb");
    size_t count = 0;
    while (roofs.size() < outlines.size() && fread(&count, sizeof count, 1, in) == 1) {
      std::vector<double> numbers(count);
      if (fread(numbers.data(), sizeof(double), count, in) != count) break;
      roofs.push_back(roofFrom(numbers, outlines[roofs.size()].size()));
    }
    fclose(in);
    waitpid(child, nullptr, 0);
    if (roofs.size() < outlines.size()) roofs.push_back(std::nullopt);
  }
  return roofs;
}

}  // namespace model::test
