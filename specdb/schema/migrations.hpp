// SPDX-License-Identifier: GPL-3.0-or-later
//
// The SQL that leads from each version of the workshop file to the next. What has once been released is never changed:
// files of that version are out there. A new version is a new file here, a line in workshop_schema.cpp, and a file of
// the old version in the tests.
#pragma once

namespace clampwright::specdb {

extern const char* const k_version_1;
extern const char* const k_version_2;
extern const char* const k_version_3;
extern const char* const k_version_4;
extern const char* const k_version_5;

} // namespace clampwright::specdb
