#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <cstring>
#include <filesystem>

#include "model/job/follow_links.h"
#include "model/job/write_job.h"

namespace model {

namespace {

namespace fs = std::filesystem;

Problem failed(const std::string& path, const std::string& doing, int error) {
  return {path,
          {},
          Severity::Error,
          "the file was not saved: " + doing + ": " + std::strerror(error),
          "the file on disk is as it was; check the folder, its rights and the space left"};
}

// An open file that closes itself.
class File {
 public:
  explicit File(int descriptor) : descriptor_(descriptor) {}
  File(const File&) = delete;
  File& operator=(const File&) = delete;
  ~File() {
    if (descriptor_ >= 0) ::close(descriptor_);
  }

  bool open() const { return descriptor_ >= 0; }
  int get() const { return descriptor_; }
  // False when the disk reports a late fault.
  bool close() {
    const int descriptor = descriptor_;
    descriptor_ = -1;
    return ::close(descriptor) == 0;
  }

 private:
  int descriptor_;
};

using Parts = std::span<const std::string_view>;

bool writeAll(int descriptor, Parts parts) {
  for (std::string_view bytes : parts) {
    while (!bytes.empty()) {
      const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
      if (written < 0 && errno == EINTR) continue;
      if (written <= 0) return false;
      bytes.remove_prefix(static_cast<size_t>(written));
    }
  }
  return true;
}

// Creates a file of a name that nothing has yet, beside `target`. The user's usual rights for new
// files hold, which is why this is not mkstemp().
int createBeside(const fs::path& target, fs::path& name) {
  static std::atomic<unsigned> counter{0};
  for (int tries = 0; tries < 100; ++tries) {
    name = target.parent_path() /
           ("." + target.filename().string() + "." + std::to_string(::getpid()) + "-" +
            std::to_string(counter++) + ".tmp");
    const int descriptor = ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (descriptor >= 0 || errno != EEXIST) return descriptor;
  }
  return -1;
}

// The rename itself is only on the disk when the folder is.
void flushFolder(const fs::path& file) {
  const fs::path folder = file.has_parent_path() ? file.parent_path() : fs::path(".");
  const File opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (opened.open()) ::fsync(opened.get());
}

// Devices and pipes cannot be replaced; they are written to.
std::optional<Problem> writeStraight(const std::string& path, Parts parts) {
  const File file(::open(path.c_str(), O_WRONLY | O_CLOEXEC));
  if (!file.open()) return failed(path, "it cannot be opened", errno);
  if (!writeAll(file.get(), parts)) return failed(path, "it cannot be written", errno);
  return std::nullopt;
}

std::optional<Problem> replace(const std::string& path, const fs::path& target,
                               const struct stat* old, Parts parts) {
  fs::path temporary;
  File file(createBeside(target, temporary));
  if (!file.open()) return failed(path, "no file can be made in its folder", errno);
  const auto giveUp = [&](const char* doing) {
    const int error = errno;
    ::unlink(temporary.c_str());
    return failed(path, doing, error);
  };
  if (!writeAll(file.get(), parts)) return giveUp("it cannot be written");
  if (old && ::fchmod(file.get(), old->st_mode & 07777) != 0) {
    return giveUp("its rights cannot be kept");
  }
  if (::fsync(file.get()) != 0) return giveUp("it cannot be flushed to the disk");
  if (!file.close()) return giveUp("it cannot be closed");
  if (::rename(temporary.c_str(), target.c_str()) != 0) return giveUp("it cannot be put in place");
  flushFolder(target);
  return std::nullopt;
}

}  // namespace

std::optional<Problem> saveAtomically(const std::string& path, std::string_view bytes) {
  return saveAtomically(path, Parts(&bytes, 1));
}

std::optional<Problem> saveAtomically(const std::string& path, Parts parts) {
  if (path.empty() || path.find('\0') != std::string::npos) {
    return failed(path, "it has no usable name", EINVAL);
  }
  const auto target = followLinks(path);
  if (!target) return failed(path, "the link leads nowhere", ELOOP);
  struct stat old {};
  const bool exists = ::stat(target->c_str(), &old) == 0;
  if (exists && S_ISDIR(old.st_mode)) return failed(path, "there is a folder of that name", EISDIR);
  if (exists && !S_ISREG(old.st_mode)) return writeStraight(path, parts);
  // Someone took the right to write away on purpose; a rename would not even notice.
  if (exists && ::access(target->c_str(), W_OK) != 0) {
    return failed(path, "it may not be written", errno);
  }
  return replace(path, *target, exists ? &old : nullptr, parts);
}

}  // namespace model
