#include "model/in_parallel.h"

#include <algorithm>
#include <exception>
#include <thread>
#include <vector>

#include <tbb/parallel_for.h>

namespace model {

std::size_t coreCount() { return std::max(1u, std::thread::hardware_concurrency()); }

void inParallel(std::size_t count, const std::function<void(std::size_t)>& piece) {
  std::vector<std::exception_ptr> thrown(count);
  tbb::parallel_for(
      std::size_t{0}, count,
      [&](std::size_t i) {
        try {
          piece(i);
        } catch (...) {
          thrown[i] = std::current_exception();
        }
      },
      tbb::simple_partitioner());
  for (const std::exception_ptr& each : thrown)
    if (each) std::rethrow_exception(each);
}

}  // namespace model
