// The skin round the layers of one thing. The workings of Strata::solids.
#pragma once

#include <vector>

#include "model/geometry/strata.h"

namespace model {

class StrataSolid {
 public:
  explicit StrataSolid(const Strata& strata);

  Solid build(std::vector<const Strata::Layer*> layers);

 private:
  using Layer = Strata::Layer;
  // Seen along an edge of the plan from point u to point v: a layer's bottom and top at both.
  struct Band {
    std::uint32_t bottomU, bottomV, topU, topV;
  };

  std::vector<Layer> joined(std::vector<const Layer*>& layers) const;
  double level(std::uint32_t point, std::uint32_t index) const;
  std::uint32_t pointIndex(std::uint32_t point, std::uint32_t level);
  void noteLevels(const std::vector<Layer>& layers);
  void caps(const Layer& layer);
  void sides(const std::vector<Layer>& layers, size_t first, size_t last);
  std::vector<Band> bandsAlong(const std::vector<Layer>& layers, std::uint32_t cell,
                               std::uint32_t u, std::uint32_t v) const;
  void face(std::uint32_t u, std::uint32_t v, const Band& band);
  void difference(std::uint32_t u, std::uint32_t v, const std::vector<Band>& ours,
                  const std::vector<Band>& theirs);

  const Strata& strata_;
  std::vector<std::uint32_t> base_;  // of each point's levels in pointOf_
  std::vector<std::uint32_t> pointOf_;
  std::vector<std::uint32_t> firstLayer_, layerCount_;  // by cell, of the thing being built
  std::vector<std::vector<std::uint32_t>> used_;        // level indices by plan point, lowest first
  std::vector<std::uint32_t> usedPoints_;
  Solid solid_;
};

}  // namespace model
