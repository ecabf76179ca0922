// The long rows of a GLB document: its nodes, meshes and accessors, one for every thing.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "model/exchange/glb_layout.h"
#include "model/exchange/glb_text.h"

namespace model {

// Each `add...` returns the index by which other rows refer to the new one.
class GlbRows {
 public:
  // `count` items of a view from item `first` on: numbers, or vectors of three. `low` and `high`
  // are the bounds of what is stored there, where the format asks for them.
  int addAccessor(GlbView view, size_t first, size_t count, bool vectors,
                  std::span<const float> low = {}, std::span<const float> high = {});
  // Triangles, or, without normals and indices (-1), one line.
  int addMesh(std::string_view name, int material, int positions, int normals, int indices);
  // `gone`: rests at scale 0. No mesh: -1.
  int addNode(std::string_view name, const GlbExtras& extras, const std::vector<int>& children,
              int mesh = -1, bool gone = false);

  // The name, or with a number after it when it is taken: readers that find two alike rename one.
  std::string unique(const std::string& name);

  // The views that accessors have used, in the order of their numbers.
  const std::vector<GlbView>& views() const { return views_; }
  // "accessors":[...],"meshes":[...],"nodes":[...], with a comma at the end; no empty lists.
  std::string members() const;

 private:
  struct Row {
    std::string text;
    int count = 0;
    int end();  // closes an entry and returns its index
  };

  size_t numberOf(GlbView view);

  Row accessors_, meshes_, nodes_;
  std::vector<GlbView> views_;
  std::unordered_set<std::string> taken_;
  std::unordered_map<std::string, int> uses_;
};

}  // namespace model
