#include "model/job/text_file.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fstream>

#include "model/job/text_index.h"

namespace model {

std::optional<std::string> readTextFile(const std::string& path, std::string& fault) {
  std::ifstream stream(path, std::ios::binary);
  std::string bytes;
  if (stream) {
    bytes.resize(kMostTextBytes + 1);
    stream.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<size_t>(std::max<std::streamsize>(0, stream.gcount())));
  }
  if (stream.bad() || (!stream && !stream.eof())) {
    fault = std::strerror(errno);
    return std::nullopt;
  }
  return bytes;
}

Problem unreadableFile(const std::string& path, const std::string& fault) {
  return {path,
          {},
          Severity::Error,
          "the file cannot be read: " + fault,
          "check its name and that you may open it"};
}

}  // namespace model
