#include "model/exchange/glb_rows.h"

namespace model {

namespace {

void appendMember(std::string& out, std::string_view key, size_t number) {
  out += key;
  appendNumber(out, number);
}

}  // namespace

int GlbRows::Row::end() {
  text += "},";
  return count++;
}

int GlbRows::addMesh(std::string_view name, int material, int positions, int normals, int indices) {
  std::string& out = meshes_.text;
  out += "{\"name\":";
  appendQuoted(out, name);
  appendMember(out, ",\"primitives\":[{\"attributes\":{\"POSITION\":", size_t(positions));
  if (normals >= 0) appendMember(out, ",\"NORMAL\":", size_t(normals));
  if (indices >= 0) appendMember(out, "},\"indices\":", size_t(indices));
  if (indices < 0) out += '}';
  appendMember(out, ",\"material\":", size_t(material));
  out += indices >= 0 ? ",\"mode\":4}]" : ",\"mode\":1}]";  // triangles, lines
  return meshes_.end();
}

int GlbRows::addNode(std::string_view name, const GlbExtras& extras,
                     const std::vector<int>& children, int mesh, bool gone) {
  std::string& out = nodes_.text;
  out += "{\"name\":";
  appendQuoted(out, name);
  if (!extras.empty()) {
    out += ",\"extras\":";
    extras.appendTo(out);
  }
  if (!children.empty()) {
    out += ",\"children\":";
    appendList(out, children);
  }
  if (mesh >= 0) appendMember(out, ",\"mesh\":", size_t(mesh));
  if (gone) out += ",\"scale\":[0.0,0.0,0.0]";
  return nodes_.end();
}

std::string GlbRows::unique(const std::string& name) {
  if (taken_.insert(name).second) return name;
  std::string candidate;
  int& count = uses_[name];
  do {
    candidate = name + " (" + std::to_string(++count + 1) + ")";
  } while (!taken_.insert(candidate).second);
  return candidate;
}

void GlbRows::appendTo(std::string& out) const {
  const auto add = [&out](const char* key, const Row& row) {
    if (row.count == 0) return;
    out += key;
    out += row.text;
    out.back() = ']';
    out += ',';
  };
  add("\"meshes\":[", meshes_);
  add("\"nodes\":[", nodes_);
}

}  // namespace model
