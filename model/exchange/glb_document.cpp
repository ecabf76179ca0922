#include "model/exchange/glb_document.h"

#include <tiny_gltf.h>

#include <algorithm>
#include <cmath>
#include <future>
#include <map>
#include <sstream>
#include <stdexcept>

#include "model/exchange/glb_accessors.h"
#include "model/exchange/glb_extras.h"
#include "model/exchange/glb_groups.h"
#include "model/exchange/glb_layout.h"
#include "model/exchange/glb_materials.h"
#include "model/exchange/glb_readings.h"
#include "model/exchange/glb_rows.h"
#include "model/exchange/utf8.h"

namespace model {

namespace {

// The library writes what is varied and short: the asset, the materials with their extension, the
// animation. What is even and long, a node, a mesh and three accessors for every thing, goes
// straight into a text: as the library's values it took five times as long as all the rest of the
// file (see BM_GlbBytes).
//
// Packing the shapes takes as long as writing about them, and neither needs the other until the
// end, so that each has a core of its own.
class DocumentWriter {
 public:
  DocumentWriter(const Model& model, const GlbOptions& options, GlbBuffers& buffers)
      : model_(model), buffers_(buffers) {
    clock_.secondsPerStage = options.secondsPerStage;
    clock_.stages = model.programme.stages.size();
    animation_.name = "Construction sequence";
  }

  std::string write() {
    const std::vector<GlbGroup> groups = groupWorks(model_.programme, model_.works);
    readings_ = glbReadings(model_);
    const GlbGroup markers = readings_ ? groupOfMarkers() : GlbGroup{};
    // Without a second thread to be had, it is done when it is waited for.
    std::future<void> packed = std::async(std::launch::async | std::launch::deferred, [&] {
      packShapes(model_.works, groups, buffers_, accessors_);
      if (readings_) packShapes(readings_->markers, {markers}, buffers_, accessors_);
    });
    describe();
    for (const Element& element : model_.works.elements) accessorCount_ += accessorsOf(element);
    accessorCount_ += kAccessorsOfLine * model_.works.strings.size();
    if (readings_) {
      for (const Element& marker : readings_->markers.elements)
        accessorCount_ += accessorsOf(marker);
    }
    const std::string rootName = rows_.unique(model_.job.name.empty() ? "Job" : model_.job.name);
    std::vector<int> nodes;
    for (const GlbGroup& group : groups) nodes.push_back(addGroup(group));
    if (readings_) nodes.push_back(addMarkers(markers));
    const int root = rows_.addNode(rootName, {}, nodes);
    const std::string frame = frameText();
    packed.get();
    addAnimationAccessors();
    return joined(root, frame);
  }

 private:
  void describe() {
    const auto text = [](const std::string& said) {
      if (!isUtf8(said)) throw std::runtime_error("a text in the job is not UTF-8");
      return tinygltf::Value(said);
    };
    const Vec3 origin = glbOrigin(model_.settingOut);
    tinygltf::Value::Object extras;
    if (!model_.job.name.empty()) extras["job"] = text(model_.job.name);
    if (!model_.job.drawing.empty()) extras["drawing"] = text(model_.job.drawing);
    if (!model_.job.datumNote.empty()) extras["datum"] = text(model_.job.datumNote);
    extras["originEast"] = tinygltf::Value(origin.x);
    extras["originNorth"] = tinygltf::Value(origin.y);
    extras["originLevel"] = tinygltf::Value(origin.z);
    if (model_.job.ordnanceDatum) {
      extras["ordnanceDatum"] = tinygltf::Value(*model_.job.ordnanceDatum);
    }
    frame_.asset.version = "2.0";
    frame_.asset.generator = "Stringcourse " STRINGCOURSE_VERSION;
    frame_.asset.extras = tinygltf::Value(std::move(extras));
  }

  int addGroup(const GlbGroup& group) {
    const std::string name = rows_.unique(nameOf(group, model_.programme));
    const GlbExtras stages = stagesOf(group, model_.programme);
    std::vector<int> children;
    for (size_t index : group.elements) {
      const Element& element = model_.works.elements[index];
      const int mesh = addMesh(element);
      children.push_back(
          rows_.addNode(rows_.unique(element.name), extrasWithReadings(element, stages), {}, mesh));
    }
    for (size_t index : group.strings) {
      const StringLine& line = model_.works.strings[index];
      const int mesh = addMesh(line);
      children.push_back(
          rows_.addNode(rows_.unique("String " + line.name), extrasOf(line, stages), {}, mesh));
    }
    // The rest pose is the finished building: only what is gone by then rests at scale 0.
    const std::vector<GlbKey> keys = keysOf(group, clock_);
    const bool gone = !keys.empty() && keys.back().scale == 0;
    const int node = rows_.addNode(name, extrasOf(group, model_.programme), children, -1, gone);
    animate(node, keys);
    return node;
  }

  GlbExtras extrasWithReadings(const Element& element, const GlbExtras& stages) const {
    GlbExtras extras = extrasOf(element, stages);
    if (!readings_) return extras;
    const auto found = readings_->ofElements.find(element.id);
    if (found != readings_->ofElements.end()) extras.say(found->second);
    return extras;
  }

  // They come with the last stage: until then there is nothing that they could be held against.
  GlbGroup groupOfMarkers() const {
    GlbGroup group;
    group.placed = int(model_.programme.stages.size()) - 1;
    for (size_t i = 0; i < readings_->markers.elements.size(); ++i) group.elements.push_back(i);
    return group;
  }

  int addMarkers(const GlbGroup& group) {
    std::vector<int> children;
    for (const size_t index : group.elements) {
      const std::string name = rows_.unique(readings_->markers.elements[index].name);
      const int first = takeAccessors(accessorsOf(readings_->markers.elements[index]));
      const int key = kMarkers - int(readings_->verdicts[index]);
      const int mesh = rows_.addMesh(rows_.unique("marker of " + name), materialFor(key), first,
                                     first + 1, first + 2);
      children.push_back(rows_.addNode(name, readings_->extras[index], {}, mesh));
    }
    const int node = rows_.addNode(rows_.unique("Readings"), {}, children);
    animate(node, keysOf(group, clock_));
    return node;
  }

  // The next so many accessors, which packShapes adds in the same order.
  int takeAccessors(size_t count) {
    nextAccessor_ += count;
    return int(nextAccessor_ - count);
  }

  int addMesh(const Element& element) {
    const size_t accessors = accessorsOf(element);
    if (accessors == 0) return -1;
    const int first = takeAccessors(accessors);
    return rows_.addMesh(rows_.unique(element.id), materialFor(int(element.material)), first,
                         first + 1, first + 2);
  }

  int addMesh(const StringLine& line) {
    return rows_.addMesh(rows_.unique("string " + line.name), materialFor(kStringLine),
                         takeAccessors(kAccessorsOfLine), -1, -1);
  }

  int materialFor(int key) {
    const auto [place, isNew] = materials_.try_emplace(key, int(frame_.materials.size()));
    if (!isNew) return place->second;
    const bool line = key == kStringLine, marker = key <= kMarkers;
    const auto verdict = Verdict(kMarkers - key);
    const GlbColour colour = line     ? stringLineColour()
                             : marker ? markerColour(verdict)
                                      : colourOf(Material(key));
    tinygltf::Material material;
    material.name = line     ? "string line"
                    : marker ? std::string("reading ") + nameOf(verdict)
                             : nameOf(Material(key));
    material.pbrMetallicRoughness.baseColorFactor.assign(colour.linear.begin(),
                                                         colour.linear.end());
    material.pbrMetallicRoughness.metallicFactor = 0;
    material.pbrMetallicRoughness.roughnessFactor = line ? 1.0 : 0.9;
    if (colour.linear[3] < 1) material.alphaMode = "BLEND";
    if (line) {
      material.extensions["KHR_materials_unlit"] = tinygltf::Value(tinygltf::Value::Object{});
      frame_.extensionsUsed.push_back("KHR_materials_unlit");
    }
    frame_.materials.push_back(std::move(material));
    return place->second;
  }

  // Each switch has two accessors behind those of the shapes: its moments and its scales.
  void animate(int node, const std::vector<GlbKey>& keys) {
    if (keys.empty()) return;
    tinygltf::AnimationSampler sampler;
    sampler.input = int(accessorCount_ + 2 * switches_.size());
    sampler.output = sampler.input + 1;
    sampler.interpolation = "STEP";
    tinygltf::AnimationChannel channel;
    channel.sampler = int(animation_.samplers.size());
    channel.target_node = node;
    channel.target_path = "scale";
    animation_.samplers.push_back(std::move(sampler));
    animation_.channels.push_back(std::move(channel));
    switches_.push_back(keys);
  }

  void addAnimationAccessors() {
    std::vector<float>& numbers = buffers_.animation;
    for (const std::vector<GlbKey>& keys : switches_) {
      const size_t first = numbers.size();
      for (const GlbKey& key : keys) numbers.push_back(float(key.seconds));
      for (const GlbKey& key : keys) numbers.insert(numbers.end(), 3, float(key.scale));
      const float start[] = {numbers[first]}, end[] = {numbers[first + keys.size() - 1]};
      accessors_.add(GlbView::Animation, first, keys.size(), false, start, end);
      accessors_.add(GlbView::Animation, first + keys.size(), keys.size(), true);
    }
  }

  // What the library writes, without the opening brace.
  std::string frameText() {
    if (!animation_.channels.empty()) frame_.animations.push_back(std::move(animation_));
    std::ostringstream stream;
    tinygltf::TinyGLTF writer;
    if (!writer.WriteGltfSceneToStream(&frame_, stream, false, false)) {
      throw std::runtime_error("the document could not be written");
    }
    std::string text = stream.str().substr(1);
    while (text.back() == '\n') text.pop_back();
    return text;
  }

  // Our members, then the library's.
  std::string joined(int root, const std::string& frame) {
    std::string text;
    text.reserve(accessors_.rows().size() + rows_.size() + frame.size() + (size_t(1) << 16));
    text += '{';
    if (!accessors_.rows().empty()) text += "\"accessors\":[" + accessors_.rows() + "],";
    rows_.appendTo(text);
    appendBuffer(text, layout(buffers_), accessors_.views());
    text += "\"scene\":0,\"scenes\":[{\"name\":";
    appendQuoted(text, rows_.unique("Site"));
    text += ",\"nodes\":[" + std::to_string(root) + "]";
    if (const GlbExtras extras = extrasOf(model_.programme, clock_); !extras.empty()) {
      text += ",\"extras\":";
      extras.appendTo(text);
    }
    text += "}],";
    text += frame;
    return text;
  }

  static constexpr int kStringLine = -1;
  static constexpr int kMarkers = -2;  // less the verdict

  const Model& model_;
  GlbBuffers& buffers_;
  GlbClock clock_;
  GlbAccessors accessors_;
  GlbRows rows_;
  std::optional<GlbReadings> readings_;
  size_t accessorCount_ = 0;  // of all shapes
  size_t nextAccessor_ = 0;
  std::vector<std::vector<GlbKey>> switches_;  // in the order of the animation's samplers
  tinygltf::Model frame_;
  tinygltf::Animation animation_;
  std::map<int, int> materials_;  // Material, kStringLine or a marker's key, to its index
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

std::string glbDocument(const Model& model, const GlbOptions& options, GlbBuffers& buffers) {
  return DocumentWriter(model, options, buffers).write();
}

}  // namespace model
