// Trade names of everything that Works holds.
#include "model/works/element.h"

namespace model {

const char* nameOf(ElementKind kind) {
  switch (kind) {
    case ElementKind::Ground:
      return "ground";
    case ElementKind::Topsoil:
      return "topsoil";
    case ElementKind::Spoil:
      return "spoil";
    case ElementKind::StandingBuilding:
      return "standing building";
    case ElementKind::Blinding:
      return "blinding";
    case ElementKind::Foundation:
      return "foundation";
    case ElementKind::CellarSlab:
      return "cellar slab";
    case ElementKind::CellarWall:
      return "cellar wall";
    case ElementKind::CellarMembrane:
      return "waterproofing";
    case ElementKind::Backfill:
      return "backfill";
    case ElementKind::Hardcore:
      return "hardcore";
    case ElementKind::GroundSlab:
      return "ground slab";
    case ElementKind::BeamFloor:
      return "beam and block floor";
    case ElementKind::FloorInsulation:
      return "floor insulation";
    case ElementKind::Screed:
      return "screed";
    case ElementKind::OuterLeaf:
      return "outer leaf";
    case ElementKind::InnerLeaf:
      return "inner leaf";
    case ElementKind::CavityFill:
      return "cavity fill";
    case ElementKind::CavityInsulation:
      return "cavity insulation";
    case ElementKind::CavityCloser:
      return "cavity closer";
    case ElementKind::Render:
      return "render";
    case ElementKind::DampCourse:
      return "damp course";
    case ElementKind::WallTie:
      return "wall tie";
    case ElementKind::CavityTray:
      return "cavity tray";
    case ElementKind::WeepVent:
      return "weep vent";
    case ElementKind::Lintel:
      return "lintel";
    case ElementKind::Padstone:
      return "padstone";
    case ElementKind::MasonrySill:
      return "sill";
    case ElementKind::AirBrick:
      return "air brick";
    case ElementKind::CavityBarrier:
      return "cavity barrier";
    case ElementKind::JointFiller:
      return "movement joint filler";
    case ElementKind::StarterStrip:
      return "starter strip";
    case ElementKind::Core:
      return "core of concrete";
    case ElementKind::VentSleeve:
      return "vent sleeve";
    case ElementKind::GardenWall:
      return "garden wall";
    case ElementKind::Coping:
      return "coping";
    case ElementKind::Joist:
      return "joist";
    case ElementKind::Deck:
      return "floor deck";
    case ElementKind::StairString:
      return "string";
    case ElementKind::StairTread:
      return "tread";
    case ElementKind::StairRiser:
      return "riser";
    case ElementKind::Newel:
      return "newel";
    case ElementKind::Handrail:
      return "handrail";
    case ElementKind::Baluster:
      return "baluster";
    case ElementKind::WallPlate:
      return "wall plate";
    case ElementKind::Rafter:
      return "rafter";
    case ElementKind::FasciaBoard:
      return "fascia board";
    case ElementKind::BargeBoard:
      return "barge board";
    case ElementKind::RoofCovering:
      return "roof covering";
    case ElementKind::Window:
      return "window";
    case ElementKind::Door:
      return "door";
    case ElementKind::ProfileBoard:
      return "profile board";
    case ElementKind::Peg:
      return "peg";
    case ElementKind::LevelPin:
      return "level pin";
    case ElementKind::TrenchSupport:
      return "trench support";
    case ElementKind::Formwork:
      return "formwork";
    case ElementKind::Scaffold:
      return "scaffold";
    case ElementKind::EdgeProtection:
      return "edge protection";
    case ElementKind::WellCover:
      return "boards over the well";
  }
  return "";
}

const char* nameOf(Material material) {
  switch (material) {
    case Material::Earth:
      return "earth";
    case Material::Topsoil:
      return "topsoil";
    case Material::Hardcore:
      return "hardcore";
    case Material::Concrete:
      return "concrete";
    case Material::LeanConcrete:
      return "lean concrete";
    case Material::Brick:
      return "facing brick";
    case Material::Block:
      return "concrete block";
    case Material::Insulation:
      return "insulation";
    case Material::Screed:
      return "screed";
    case Material::Membrane:
      return "membrane";
    case Material::Timber:
      return "timber";
    case Material::Plywood:
      return "plywood";
    case Material::Steel:
      return "steel";
    case Material::Tile:
      return "roof tile";
    case Material::Glass:
      return "glass";
    case Material::Render:
      return "render";
    case Material::Clay:
      return "fired clay";
    case Material::Masonry:
      return "masonry";
  }
  return "";
}

const char* nameOf(Unit unit) {
  switch (unit) {
    case Unit::Each:
      return "no.";
    case Unit::Metre:
      return "m";
    case Unit::SquareMetre:
      return "m2";
    case Unit::CubicMetre:
      return "m3";
  }
  return "";
}

bool isTemporary(ElementKind kind) {
  switch (kind) {
    case ElementKind::ProfileBoard:
    case ElementKind::Peg:
    case ElementKind::LevelPin:
    case ElementKind::TrenchSupport:
    case ElementKind::Formwork:
    case ElementKind::Scaffold:
    case ElementKind::EdgeProtection:
    case ElementKind::WellCover:
      return true;
    default:
      return false;
  }
}

}  // namespace model
