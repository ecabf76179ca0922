#include "model/exchange/glb.h"

#include <cmath>
#include <cstdint>
#include <stdexcept>

#include "model/exchange/glb_buffers.h"
#include "model/exchange/glb_document.h"
#include "model/exchange/glb_layout.h"
#include "model/job/write_job.h"

namespace model {

namespace {

void appendBytes(std::string& out, size_t number) {
  for (int shift = 0; shift < 32; shift += 8) out.push_back(char(number >> shift & 0xff));
}

// The file as it lies in memory before it is written: its arrays are not copied together.
class GlbFile {
 public:
  GlbFile(const Model& model, const GlbOptions& options);
  GlbFile(const GlbFile&) = delete;
  GlbFile& operator=(const GlbFile&) = delete;

  const std::vector<std::string_view>& parts() const { return parts_; }

 private:
  void addBinary(const std::vector<GlbSpan>& spans);

  GlbBuffers buffers_;
  std::string head_, text_, binaryHead_;
  std::vector<std::string_view> parts_;  // of the four above
};

// Source: [GLTF2] 4.4 GLB file format
GlbFile::GlbFile(const Model& model, const GlbOptions& options)
    : buffers_(glbOrigin(model.settingOut)) {
  if (!std::isfinite(options.secondsPerStage) || options.secondsPerStage < 0.01) {
    throw std::runtime_error("a stage of the animation must last at least 0.01 seconds");
  }
  text_ = glbDocument(model, options, buffers_);
  text_.resize((text_.size() + 3) / 4 * 4, ' ');
  const std::vector<GlbSpan> spans = layout(buffers_);
  const size_t binary = chunkSize(spans);

  const size_t total = 12 + 8 + text_.size() + (binary > 0 ? 8 + binary : 0);
  if (total > UINT32_MAX) throw std::runtime_error("the file would be over 4 GiB");
  head_ = "glTF";
  appendBytes(head_, 2);
  appendBytes(head_, total);
  appendBytes(head_, text_.size());
  head_ += "JSON";
  parts_ = {head_, text_};
  if (binary == 0) return;
  appendBytes(binaryHead_, binary);
  binaryHead_.append("BIN\0", 4);
  parts_.push_back(binaryHead_);
  addBinary(spans);
}

void GlbFile::addBinary(const std::vector<GlbSpan>& spans) {
  static constexpr std::string_view kPadding("\0\0\0", 3);
  for (const GlbSpan& span : spans) {
    parts_.push_back(span.bytes);
    parts_.push_back(kPadding.substr(0, (4 - span.size % 4) % 4));
  }
}

}  // namespace

std::string glbBytes(const Model& model, const GlbOptions& options) {
  const GlbFile file(model, options);
  size_t total = 0;
  for (const std::string_view part : file.parts()) total += part.size();
  std::string out;
  out.reserve(total);
  for (const std::string_view part : file.parts()) out += part;
  return out;
}

std::optional<Problem> writeGlb(const Model& model, const std::string& path,
                                const GlbOptions& options) {
  try {
    const GlbFile file(model, options);
    return saveAtomically(path, file.parts());
  } catch (const std::exception& problem) {
    return Problem{
        path, {}, Severity::Error, std::string("cannot be written: ") + problem.what(), ""};
  }
}

}  // namespace model
