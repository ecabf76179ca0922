// A reader of GLB bytes for the tests, written against the format and not against the writer.
#pragma once

#include <cstring>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <string>
#include <vector>

#include "model/geometry/solid.h"

namespace model::testing {

class GlbReader {
 public:
  explicit GlbReader(const std::string& bytes) {
    if (bytes.compare(0, 4, "glTF") != 0) throw std::runtime_error("no magic");
    if (number<std::uint32_t>(bytes, 4) != 2) throw std::runtime_error("not version 2");
    if (number<std::uint32_t>(bytes, 8) != bytes.size()) throw std::runtime_error("wrong length");
    const size_t textSize = number<std::uint32_t>(bytes, 12);
    if (bytes.compare(16, 4, "JSON") != 0) throw std::runtime_error("no JSON chunk");
    json = nlohmann::json::parse(bytes.substr(20, textSize));
    const size_t next = 20 + textSize;
    if (next == bytes.size()) return;
    if (bytes.compare(next + 4, 4, std::string("BIN\0", 4)) != 0) {
      throw std::runtime_error("no BIN chunk");
    }
    binary = bytes.substr(next + 8);
    if (number<std::uint32_t>(bytes, next) != binary.size()) {
      throw std::runtime_error("wrong length of the BIN chunk");
    }
  }

  // The numbers of an accessor, all components in one row.
  std::vector<double> values(size_t index) const {
    const auto& accessor = json.at("accessors").at(index);
    const auto& view = json.at("bufferViews").at(accessor.at("bufferView").get<size_t>());
    const int type = accessor.at("componentType");
    const size_t components = accessor.at("type") == "VEC3" ? 3 : 1;
    const size_t size = type == 5123 ? 2 : 4;
    const size_t stride = view.value("byteStride", components * size);
    const size_t start =
        view.value("byteOffset", size_t(0)) + accessor.value("byteOffset", size_t(0));
    std::vector<double> out;
    for (size_t i = 0; i < accessor.at("count").get<size_t>(); ++i) {
      for (size_t c = 0; c < components; ++c) {
        const size_t at = start + i * stride + c * size;
        if (at + size > binary.size()) throw std::runtime_error("outside the buffer");
        out.push_back(type == 5123   ? double(number<std::uint16_t>(binary, at))
                      : type == 5125 ? double(number<std::uint32_t>(binary, at))
                                     : double(number<float>(binary, at)));
      }
    }
    return out;
  }

  // The node whose extras carry this id; null when there is none.
  nlohmann::json nodeWithId(const std::string& id) const {
    for (const auto& node : json.at("nodes")) {
      if (node.contains("extras") && node.at("extras").value("id", "") == id) return node;
    }
    return nullptr;
  }

  // A node's triangles in the model's axes, with the origin put back.
  Solid solidOf(const nlohmann::json& node) const {
    const auto& extras = json.at("asset").at("extras");
    const auto& primitive =
        json.at("meshes").at(node.at("mesh").get<size_t>()).at("primitives").at(0);
    const auto p = values(primitive.at("attributes").at("POSITION"));
    Solid solid;
    for (size_t i = 0; i + 2 < p.size(); i += 3) {
      solid.points.push_back({p[i] + extras.at("originEast").get<double>(),
                              -p[i + 2] + extras.at("originNorth").get<double>(),
                              p[i + 1] + extras.at("originLevel").get<double>()});
    }
    const auto t = values(primitive.at("indices"));
    for (size_t i = 0; i + 2 < t.size(); i += 3) {
      solid.triangles.push_back(
          {std::uint32_t(t[i]), std::uint32_t(t[i + 1]), std::uint32_t(t[i + 2])});
    }
    return solid;
  }

  nlohmann::json json;
  std::string binary;

 private:
  template <typename T>
  static T number(const std::string& bytes, size_t at) {
    T value;
    std::memcpy(&value, bytes.data() + at, sizeof(T));
    return value;
  }
};

}  // namespace model::testing
