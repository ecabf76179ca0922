#include "viewer/keep_memory.h"

#include <malloc.h>

namespace viewer {

void keepFreedMemory() {
#ifdef __GLIBC__
  // The most that the C library allows; only arrays larger than this are mapped for themselves.
  mallopt(M_MMAP_THRESHOLD, 32 << 20);
  mallopt(M_TRIM_THRESHOLD, 128 << 20);
#endif
}

}  // namespace viewer
