#include "model/exchange/glb_document.h"

#include <tiny_gltf.h>

#include <cmath>
#include <map>
#include <set>

#include "model/exchange/glb_extras.h"
#include "model/exchange/glb_groups.h"
#include "model/exchange/glb_layout.h"
#include "model/exchange/glb_materials.h"

namespace model {

namespace {

class DocumentWriter {
 public:
  DocumentWriter(const Model& model, const GlbOptions& options, GlbBuffers& buffers)
      : model_(model), buffers_(buffers) {
    clock_.secondsPerStage = options.secondsPerStage;
    clock_.stages = model.programme.stages.size();
  }

  tinygltf::Model write() {
    describe();
    document_.nodes.emplace_back();  // the root
    document_.nodes[0].name = unique(model_.job.name.empty() ? "Job" : model_.job.name);
    tinygltf::Animation animation;
    animation.name = "Construction sequence";
    for (const GlbGroup& group : groupWorks(model_.programme, model_.works)) {
      const int node = addGroup(group);
      document_.nodes[0].children.push_back(node);
      animate(animation, node, keysOf(group, clock_));
    }
    if (!animation.channels.empty()) document_.animations.push_back(animation);
    addScene();
    addBufferViews();
    return std::move(document_);
  }

 private:
  // Names are kept unique, because readers that find two alike rename one of them.
  std::string unique(const std::string& name) {
    std::string candidate = checked(name);
    for (int& count = uses_[name]; !taken_.insert(candidate).second;) {
      candidate = name + " (" + std::to_string(++count + 1) + ")";
    }
    return candidate;
  }

  void describe() {
    document_.asset.version = "2.0";
    document_.asset.generator = "Stringcourse " STRINGCOURSE_VERSION;
    const Vec3 origin = glbOrigin(model_.settingOut);
    Extras extras;
    say(extras, "job", model_.job.name);
    say(extras, "datum", model_.job.datumNote);
    say(extras, "originEast", origin.x);
    say(extras, "originNorth", origin.y);
    say(extras, "originLevel", origin.z);
    if (model_.job.ordnanceDatum) say(extras, "ordnanceDatum", *model_.job.ordnanceDatum);
    document_.asset.extras = tinygltf::Value(std::move(extras));
  }

  int addNode(const std::string& name, Extras extras, int mesh = -1) {
    tinygltf::Node node;
    node.name = unique(name);
    node.mesh = mesh;
    node.extras = tinygltf::Value(std::move(extras));
    document_.nodes.push_back(std::move(node));
    return int(document_.nodes.size()) - 1;
  }

  int addGroup(const GlbGroup& group) {
    const int node = addNode(nameOf(group, model_.programme), extrasOf(group, model_.programme));
    std::vector<int> children;
    for (size_t index : group.elements) {
      const Element& element = model_.works.elements[index];
      children.push_back(
          addNode(element.name, extrasOf(element, group, model_.programme), addMesh(element)));
    }
    for (size_t index : group.strings) {
      const StringLine& line = model_.works.strings[index];
      Extras extras;
      say(extras, "kind", std::string("string line"));
      sayStages(extras, group, model_.programme);
      children.push_back(addNode("String " + line.name, std::move(extras), addMesh(line)));
    }
    document_.nodes[size_t(node)].children = std::move(children);
    return node;
  }

  int addMesh(const Element& element) {
    const GlbPart part = buffers_.add(element.solid);
    if (part.indexCount == 0) return -1;
    tinygltf::Primitive primitive;
    primitive.mode = TINYGLTF_MODE_TRIANGLES;
    primitive.material = materialFor(int(element.material));
    primitive.attributes["POSITION"] = addPositions(part);
    primitive.attributes["NORMAL"] =
        addAccessor(GlbView::Normals, part.firstNormal, part.vertexCount, TINYGLTF_TYPE_VEC3);
    primitive.indices = addAccessor(part.wide ? GlbView::Indices32 : GlbView::Indices16,
                                    part.firstIndex, part.indexCount, TINYGLTF_TYPE_SCALAR);
    return addMesh(checked(element.id), std::move(primitive));
  }

  int addMesh(const StringLine& line) {
    tinygltf::Primitive primitive;
    primitive.mode = TINYGLTF_MODE_LINE;
    primitive.material = materialFor(kStringLine);
    primitive.attributes["POSITION"] = addPositions(buffers_.addLine(line.a, line.b));
    return addMesh("string " + checked(line.name), std::move(primitive));
  }

  int addMesh(const std::string& id, tinygltf::Primitive primitive) {
    tinygltf::Mesh mesh;
    mesh.name = unique(id);
    mesh.primitives.push_back(std::move(primitive));
    document_.meshes.push_back(std::move(mesh));
    return int(document_.meshes.size()) - 1;
  }

  int addAccessor(GlbView view, size_t first, size_t count, int type) {
    tinygltf::Accessor accessor;
    accessor.bufferView = int(view);  // renumbered when the views that are used are known
    accessor.byteOffset = first * elementSize(view);
    accessor.componentType = componentType(view);
    accessor.count = count;
    accessor.type = type;
    document_.accessors.push_back(std::move(accessor));
    return int(document_.accessors.size()) - 1;
  }

  int addPositions(const GlbPart& part) {
    const int index =
        addAccessor(GlbView::Positions, part.firstVertex, part.vertexCount, TINYGLTF_TYPE_VEC3);
    tinygltf::Accessor& accessor = document_.accessors[size_t(index)];
    accessor.minValues.assign(part.low.begin(), part.low.end());
    accessor.maxValues.assign(part.high.begin(), part.high.end());
    return index;
  }

  int materialFor(int key) {
    const auto [place, isNew] = materials_.try_emplace(key, int(document_.materials.size()));
    if (!isNew) return place->second;
    const bool line = key == kStringLine;
    const GlbColour colour = line ? stringLineColour() : colourOf(Material(key));
    tinygltf::Material material;
    material.name = line ? "string line" : nameOf(Material(key));
    material.pbrMetallicRoughness.baseColorFactor.assign(colour.linear.begin(),
                                                         colour.linear.end());
    material.pbrMetallicRoughness.metallicFactor = 0;
    material.pbrMetallicRoughness.roughnessFactor = line ? 1.0 : 0.9;
    if (colour.linear[3] < 1) material.alphaMode = "BLEND";
    if (line) {
      material.extensions["KHR_materials_unlit"] = tinygltf::Value(Extras{});
      document_.extensionsUsed.push_back("KHR_materials_unlit");
    }
    document_.materials.push_back(std::move(material));
    return place->second;
  }

  // The rest pose is the finished building: only what is gone by then rests at scale 0.
  void animate(tinygltf::Animation& animation, int node, const std::vector<GlbKey>& keys) {
    if (keys.empty()) return;
    if (keys.back().scale == 0) document_.nodes[size_t(node)].scale = {0, 0, 0};
    const size_t first = buffers_.animation.size();
    for (const GlbKey& key : keys) buffers_.animation.push_back(float(key.seconds));
    for (const GlbKey& key : keys)
      buffers_.animation.insert(buffers_.animation.end(), 3, float(key.scale));
    tinygltf::AnimationSampler sampler;
    sampler.input = addAccessor(GlbView::Animation, first, keys.size(), TINYGLTF_TYPE_SCALAR);
    document_.accessors.back().minValues = {double(buffers_.animation[first])};
    document_.accessors.back().maxValues = {double(buffers_.animation[first + keys.size() - 1])};
    sampler.output =
        addAccessor(GlbView::Animation, first + keys.size(), keys.size(), TINYGLTF_TYPE_VEC3);
    sampler.interpolation = "STEP";
    tinygltf::AnimationChannel channel;
    channel.sampler = int(animation.samplers.size());
    channel.target_node = node;
    channel.target_path = "scale";
    animation.samplers.push_back(std::move(sampler));
    animation.channels.push_back(std::move(channel));
  }

  void addScene() {
    tinygltf::Value::Array stages;
    for (size_t i = 0; i < clock_.stages; ++i) {
      const Stage& stage = model_.programme.stages[i];
      Extras entry;
      say(entry, "stage", int(i) + 1);
      say(entry, "id", stage.id);
      say(entry, "name", stage.name);
      say(entry, "startSeconds", clock_.startOf(int(i)));
      say(entry, "startDate", stage.start);
      say(entry, "finishDate", stage.finish);
      stages.emplace_back(std::move(entry));
    }
    tinygltf::Scene scene;
    scene.name = unique("Site");
    scene.nodes = {0};
    if (!stages.empty()) {
      scene.extras = tinygltf::Value(Extras{{"stages", tinygltf::Value(std::move(stages))}});
    }
    document_.scenes.push_back(std::move(scene));
    document_.defaultScene = 0;
  }

  // Only the views that hold something: an empty one is not allowed.
  void addBufferViews() {
    std::map<int, int> numbers;
    for (const GlbSpan& span : layout(buffers_)) {
      numbers[int(span.view)] = int(document_.bufferViews.size());
      tinygltf::BufferView view;
      view.buffer = 0;
      view.byteOffset = span.offset;
      view.byteLength = span.size;
      view.target = target(span.view);
      if (view.target == TINYGLTF_TARGET_ARRAY_BUFFER) view.byteStride = elementSize(span.view);
      document_.bufferViews.push_back(std::move(view));
    }
    for (tinygltf::Accessor& accessor : document_.accessors) {
      accessor.bufferView = numbers.at(accessor.bufferView);
    }
  }

  static constexpr int kStringLine = -1;

  const Model& model_;
  GlbBuffers& buffers_;
  GlbClock clock_;
  tinygltf::Model document_;
  std::map<int, int> materials_;  // Material, or kStringLine, to its index
  std::set<std::string> taken_;
  std::map<std::string, int> uses_;
};

}  // namespace

Vec3 glbOrigin(const SettingOut& settingOut) {
  if (settingOut.outline.empty()) return {0, 0, 0};
  Vec2 low = settingOut.outline[0], high = low;
  for (const Vec2& p : settingOut.outline) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  }
  return {std::round((low.x + high.x) / 2), std::round((low.y + high.y) / 2), 0};
}

tinygltf::Model glbDocument(const Model& model, const GlbOptions& options, GlbBuffers& buffers) {
  return DocumentWriter(model, options, buffers).write();
}

}  // namespace model
