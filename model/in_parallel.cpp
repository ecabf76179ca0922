#include "model/in_parallel.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <system_error>
#include <thread>
#include <vector>

namespace model {

std::size_t coreCount() { return std::max(1u, std::thread::hardware_concurrency()); }

void inParallel(std::size_t count, const std::function<void(std::size_t)>& piece) {
  std::vector<std::exception_ptr> thrown(count);
  std::atomic<std::size_t> next{0};
  const auto work = [&] {
    for (std::size_t i = next++; i < count; i = next++) {
      try {
        piece(i);
      } catch (...) {
        thrown[i] = std::current_exception();
      }
    }
  };
  {
    const std::size_t cores = coreCount();
    std::vector<std::jthread> others;
    for (std::size_t i = 1; i < std::min(cores, count); ++i) {
      // Where the machine gives no more threads, those there are do it all.
      try {
        others.emplace_back(work);
      } catch (const std::system_error&) {
        break;
      }
    }
    work();
  }
  for (const std::exception_ptr& each : thrown)
    if (each) std::rethrow_exception(each);
}

}  // namespace model
