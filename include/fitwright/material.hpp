#ifndef FITWRIGHT_MATERIAL_HPP
#define FITWRIGHT_MATERIAL_HPP

// What parts are made of: named materials, your own, and how much they grow.

#include <fitwright/material/expansion.hpp>
#include <fitwright/material/find.hpp>
#include <fitwright/material/material.hpp>
#include <fitwright/material/materials.hpp>
#include <fitwright/material/units.hpp>

#endif
