#include "tests/support/longest_ways.h"

#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/bellman_ford_shortest_paths.hpp>

namespace test_support {

std::optional<std::vector<double>> longestWays(size_t vertices, const std::vector<Edge>& edges,
                                               size_t from) {
  using Graph =
      boost::adjacency_list<boost::vecS, boost::vecS, boost::directedS, boost::no_property,
                            boost::property<boost::edge_weight_t, double>>;
  Graph graph(vertices);
  // The shortest ways over lengths turned round.
  for (const Edge& edge : edges) boost::add_edge(edge.from, edge.to, -edge.length, graph);
  std::vector<double> distance(vertices, 1e9);
  distance[from] = 0;
  const bool settled = boost::bellman_ford_shortest_paths(
      graph, static_cast<int>(vertices),
      boost::weight_map(boost::get(boost::edge_weight, graph)).distance_map(distance.data()));
  if (!settled) return std::nullopt;
  for (double& each : distance) each = -each;
  return distance;
}

}  // namespace test_support
