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

}  // namespace

// Source: [GLTF2] 4.4 GLB file format
std::string glbBytes(const Model& model, const GlbOptions& options) {
  if (!std::isfinite(options.secondsPerStage) || options.secondsPerStage < 0.01) {
    throw std::runtime_error("a stage of the animation must last at least 0.01 seconds");
  }
  GlbBuffers buffers(glbOrigin(model.settingOut));
  size_t triangles = 0;
  for (const Element& element : model.works.elements) triangles += element.solid.triangles.size();
  buffers.reserve(triangles);
  std::string text = glbDocument(model, options, buffers);
  text.resize((text.size() + 3) / 4 * 4, ' ');
  const std::vector<GlbSpan> spans = layout(buffers);
  const size_t binary = chunkSize(spans);

  const size_t total = 12 + 8 + text.size() + (binary > 0 ? 8 + binary : 0);
  if (total > UINT32_MAX) throw std::runtime_error("the file would be over 4 GiB");
  std::string out;
  out.reserve(total);
  out += "glTF";
  appendBytes(out, 2);
  appendBytes(out, total);
  appendBytes(out, text.size());
  out += "JSON";
  out += text;
  if (binary > 0) {
    appendBytes(out, binary);
    out.append("BIN\0", 4);
    const size_t start = out.size();
    for (const GlbSpan& span : spans) {
      out.resize(start + span.offset, '\0');
      out.append(span.bytes);
    }
    out.resize(start + binary, '\0');
  }
  return out;
}

std::optional<Problem> writeGlb(const Model& model, const std::string& path,
                                const GlbOptions& options) {
  try {
    return saveAtomically(path, glbBytes(model, options));
  } catch (const std::exception& problem) {
    return Problem{
        path, {}, Severity::Error, std::string("cannot be written: ") + problem.what(), ""};
  }
}

}  // namespace model
