// How a section comes and goes without a jolt: its plane slides in from where it cuts nothing.
#pragma once

#include "viewer/frame.h"
#include "viewer/scene.h"

namespace viewer {

class SectionEase {
 public:
  void begin(const Section& from, const Section& to, const Scene& scene);
  // `part` of the way, 0..1; the section is left alone when nothing was begun.
  void at(double part, Section& section);
  // At its end at once.
  void finish(Section& section) { at(1, section); }
  // Whether the section is the one that it was last taken to, so that no hand has moved it.
  bool made(const Section& section) const;
  void originMoved(const glm::vec3& by);

 private:
  bool moving_ = false;
  Section from_, to_;
  float fromOutside_ = 0, toOutside_ = 0;  // the planes' last numbers where they cut nothing
};

}  // namespace viewer
