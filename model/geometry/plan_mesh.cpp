#include "model/geometry/plan_mesh.h"

#include "model/geometry/plan_triangulation.h"
#include "model/geometry/polygon.h"

namespace model {

namespace {

double areaOf(const PlanMesh& mesh, const PlanCell& cell) {
  const auto& [a, b, c] = cell.corners;
  return cross(mesh.points[b] - mesh.points[a], mesh.points[c] - mesh.points[a]) / 2;
}

// Cells that no cut parts are one face; its inside point is the middle of its largest cell.
void findFaces(PlanMesh& mesh) {
  constexpr std::uint32_t kNone = 0xffffffffu;
  for (PlanCell& cell : mesh.cells) cell.face = kNone;
  std::vector<std::uint32_t> todo;
  for (std::uint32_t first = 0; first < mesh.cells.size(); ++first) {
    if (mesh.cells[first].face != kNone) continue;
    const auto face = static_cast<std::uint32_t>(mesh.faces.size());
    mesh.faces.emplace_back();
    double largest = 0;
    todo.push_back(first);
    mesh.cells[first].face = face;
    while (!todo.empty()) {
      const PlanCell& cell = mesh.cells[todo.back()];
      todo.pop_back();
      const double area = areaOf(mesh, cell);
      mesh.faces[face].area += area;
      if (area > largest) {
        largest = area;
        const auto& [a, b, c] = cell.corners;
        mesh.faces[face].inside = (mesh.points[a] + mesh.points[b] + mesh.points[c]) / 3.0;
      }
      for (size_t k = 0; k < 3; ++k) {
        const std::uint32_t other = cell.beyond[k];
        if (cell.cut[k] || other == kNoCell || mesh.cells[other].face != kNone) continue;
        mesh.cells[other].face = face;
        todo.push_back(other);
      }
    }
  }
}

}  // namespace

PlanMesh cutPlan(const std::vector<PlanCut>& cuts) {
  const Arrangement arrangement = arrange(cuts);
  PlanMesh mesh;
  if (arrangement.points.size() < 3) return mesh;
  PlanTriangulation triangulation(arrangement.points);
  if (triangulation.cells().empty()) return mesh;
  for (const auto& [a, b] : arrangement.edges) triangulation.force(a, b);
  triangulation.improve();
  for (const GridPoint& p : arrangement.points) mesh.points.push_back(offGrid(p));
  mesh.cells = std::move(triangulation.cells());
  findFaces(mesh);
  return mesh;
}

}  // namespace model
