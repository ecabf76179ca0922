// The long rows of a GLB document: its nodes and meshes, one for every thing.
#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "model/exchange/glb_text.h"

namespace model {

// Each `add...` returns the index by which other rows refer to the new one.
class GlbRows {
 public:
  // Triangles, or, without normals and indices (-1), one line.
  int addMesh(std::string_view name, int material, int positions, int normals, int indices);
  // `gone`: rests at scale 0. No mesh: -1.
  int addNode(std::string_view name, const GlbExtras& extras, const std::vector<int>& children,
              int mesh = -1, bool gone = false);

  // The name, or with a number after it when it is taken: readers that find two alike rename one.
  std::string unique(const std::string& name);

  // "meshes":[...],"nodes":[...], appended with a comma at the end; no empty lists.
  void appendTo(std::string& out) const;
  size_t size() const { return meshes_.text.size() + nodes_.text.size(); }  // bytes, about

 private:
  struct Row {
    std::string text;
    int count = 0;
    int end();  // closes an entry and returns its index
  };

  Row meshes_, nodes_;
  std::unordered_set<std::string> taken_;
  std::unordered_map<std::string, int> uses_;
};

}  // namespace model
