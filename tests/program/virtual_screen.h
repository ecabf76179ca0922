// A screen that nobody sees, with the real program on it: what it shows can be looked at, and it
// can be driven by mouse and keyboard. For tests only.
#pragma once

#include <fcntl.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <sstream>
#include <string>
#include <thread>
#include <vector>

namespace screen {

// 8-bit red, green, blue, rows from the top.
struct Shot {
  int width = 0, height = 0;
  std::vector<unsigned char> rgb;

  unsigned at(int x, int y) const {
    const unsigned char* p = &rgb[(size_t(y) * size_t(width) + size_t(x)) * 3];
    return unsigned(p[0]) << 16 | unsigned(p[1]) << 8 | p[2];
  }
  // Pixels of a rectangle that differ from another shot's.
  int differences(const Shot& other, int x0, int y0, int x1, int y1) const {
    int count = 0;
    for (int y = y0; y < y1; ++y)
      for (int x = x0; x < x1; ++x) count += at(x, y) != other.at(x, y);
    return count;
  }
  int count(unsigned colour, int x0, int y0, int x1, int y1) const {
    int found = 0;
    for (int y = y0; y < y1; ++y)
      for (int x = x0; x < x1; ++x) found += at(x, y) == colour;
    return found;
  }
};

inline bool eventually(const std::function<bool()>& claim, double seconds = 40) {
  const auto end = std::chrono::steady_clock::now() + std::chrono::duration<double>(seconds);
  while (std::chrono::steady_clock::now() < end) {
    if (claim()) return true;
    std::this_thread::sleep_for(std::chrono::milliseconds(120));
  }
  return claim();
}

inline bool installed(const std::string& program) {
  return std::system(("command -v " + program + " >/dev/null 2>&1").c_str()) == 0;
}

// One X server and at most one program on it; both end with this.
class VirtualScreen {
 public:
  VirtualScreen(int width, int height) {
    int pipeEnds[2];
    if (pipe(pipeEnds) != 0) return;
    server_ = fork();
    if (server_ == 0) {
      close(pipeEnds[0]);
      const std::string size = std::to_string(width) + "x" + std::to_string(height) + "x24";
      const std::string fd = std::to_string(pipeEnds[1]);
      quiet();
      // Without -noreset it starts afresh, and refuses callers, whenever the last one leaves.
      execlp("Xvfb", "Xvfb", "-displayfd", fd.c_str(), "-screen", "0", size.c_str(), "-nolisten",
             "tcp", "-noreset", nullptr);
      _exit(127);
    }
    close(pipeEnds[1]);
    char text[16] = "";
    size_t have = 0;
    while (have + 1 < sizeof text && read(pipeEnds[0], text + have, 1) == 1 && text[have] != '\n')
      ++have;
    close(pipeEnds[0]);
    text[have] = 0;
    if (have) display_ = std::string(":") + text;
  }
  ~VirtualScreen() {
    stop(program_);
    stop(server_);
  }
  VirtualScreen(const VirtualScreen&) = delete;
  VirtualScreen& operator=(const VirtualScreen&) = delete;

  bool works() const { return !display_.empty(); }
  pid_t program() const { return program_; }

  void open(const std::string& binary, const std::string& job) {
    program_ = fork();
    if (program_ != 0) return;
    setenv("DISPLAY", display_.c_str(), 1);
    setenv("LIBGL_ALWAYS_SOFTWARE", "1", 1);
    unsetenv("WAYLAND_DISPLAY");
    execl(binary.c_str(), binary.c_str(), job.c_str(), nullptr);
    _exit(127);
  }
  bool running() const { return program_ > 0 && waitpid(program_, nullptr, WNOHANG) == 0; }

  // "key space", "mousemove 10 20 click 1".
  void hand(const std::string& actions) const { output("xdotool " + actions); }
  std::string title() const {
    std::string text = output("xdotool search --onlyvisible --name Stringcourse getwindowname");
    while (!text.empty() && text.back() == '\n') text.pop_back();
    return text;
  }
  Shot shot() const {
    const std::string bytes = output("import -window root -depth 8 ppm:-");
    std::istringstream in(bytes);
    std::string magic;
    int most = 0;
    Shot shot;
    in >> magic >> shot.width >> shot.height >> most;
    in.get();
    shot.rgb.resize(size_t(shot.width) * size_t(shot.height) * 3);
    in.read(reinterpret_cast<char*>(shot.rgb.data()), std::streamsize(shot.rgb.size()));
    return shot;
  }
  // Seconds of processor time that the program has used.
  double processorTime() const {
    std::ifstream stat("/proc/" + std::to_string(program_) + "/stat");
    std::string text((std::istreambuf_iterator<char>(stat)), {});
    std::istringstream fields(text.substr(text.rfind(')') + 2));
    std::string skipped;
    for (int i = 0; i < 11; ++i) fields >> skipped;
    double user = 0, system = 0;
    fields >> user >> system;
    return (user + system) / double(sysconf(_SC_CLK_TCK));
  }

 private:
  static void quiet() {
    const int null = ::open("/dev/null", O_WRONLY);
    dup2(null, STDERR_FILENO);
  }
  static void stop(pid_t process) {
    if (process <= 0) return;
    kill(process, SIGTERM);
    waitpid(process, nullptr, 0);
  }
  std::string output(const std::string& command) const {
    const std::string line = "DISPLAY=" + display_ + " " + command + " 2>/dev/null";
    std::string text;
    FILE* pipe = popen(line.c_str(), "r");
    if (!pipe) return text;
    std::array<char, 65536> buffer;
    for (size_t n; (n = fread(buffer.data(), 1, buffer.size(), pipe)) > 0;)
      text.append(buffer.data(), n);
    pclose(pipe);
    return text;
  }

  pid_t server_ = -1, program_ = -1;
  std::string display_;
};

}  // namespace screen
