#ifndef FITWRIGHT_PRESS_HPP
#define FITWRIGHT_PRESS_HPP

// Parts pressed together: pressure, stress, force, closing-in, torque; bushes to ream, plugs to hold.

#include <fitwright/press/bore.hpp>
#include <fitwright/press/friction.hpp>
#include <fitwright/press/interference.hpp>
#include <fitwright/press/joint.hpp>
#include <fitwright/press/plug.hpp>
#include <fitwright/press/press.hpp>
#include <fitwright/press/result.hpp>
#include <fitwright/press/wall.hpp>
#include <fitwright/press/wanted.hpp>

#endif
