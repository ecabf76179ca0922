#include "model/exchange/glb.h"

#include <tiny_gltf.h>

#include <cmath>
#include <cstdint>
#include <sstream>
#include <stdexcept>

#include "model/exchange/glb_buffers.h"
#include "model/exchange/glb_document.h"
#include "model/exchange/glb_layout.h"
#include "model/job/write_job.h"

namespace model {

namespace {

// The text of the document. The library writes all but the buffer: given the bytes, it would copy
// them three times over, so the one line that names the buffer is put in here.
std::string documentText(const tinygltf::Model& document, size_t bytesInBuffer) {
  std::ostringstream stream;
  tinygltf::TinyGLTF writer;
  if (!writer.WriteGltfSceneToStream(&document, stream, false, false)) {
    throw std::runtime_error("the document could not be written");
  }
  std::string text = std::move(stream).str();
  while (!text.empty() && text.back() == '\n') text.pop_back();
  if (bytesInBuffer > 0) {
    text.insert(1, "\"buffers\":[{\"byteLength\":" + std::to_string(bytesInBuffer) + "}],");
  }
  text.resize((text.size() + 3) / 4 * 4, ' ');
  return text;
}

void appendNumber(std::string& out, size_t number) {
  for (int shift = 0; shift < 32; shift += 8) out.push_back(char(number >> shift & 0xff));
}

}  // namespace

// Source: [GLTF2] 4.4 GLB file format
std::string glbBytes(const Model& model, const GlbOptions& options) {
  if (!std::isfinite(options.secondsPerStage) || options.secondsPerStage < 0.01) {
    throw std::runtime_error("a stage of the animation must last at least 0.01 seconds");
  }
  GlbBuffers buffers(glbOrigin(model.settingOut));
  const tinygltf::Model document = glbDocument(model, options, buffers);
  const std::vector<GlbSpan> spans = layout(buffers);
  const size_t binary = chunkSize(spans);
  const std::string text = documentText(document, binary);

  const size_t total = 12 + 8 + text.size() + (binary > 0 ? 8 + binary : 0);
  if (total > UINT32_MAX) throw std::runtime_error("the file would be over 4 GiB");
  std::string out;
  out.reserve(total);
  out += "glTF";
  appendNumber(out, 2);
  appendNumber(out, total);
  appendNumber(out, text.size());
  out += "JSON";
  out += text;
  if (binary > 0) {
    appendNumber(out, binary);
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
