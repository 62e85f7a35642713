// SPDX-License-Identifier: GPL-3.0-or-later
//
// For the .cpp files of this folder: the weight of a joint in a search.
#pragma once

namespace SQLite {
class Database;
}

namespace clampwright::specdb {

// Lets `joint_worth(joint_search)` be asked for by that connection: the lower, the better a joint fits what was
// searched for. Once a connection.
void offer_joint_worth(const SQLite::Database& database);

} // namespace clampwright::specdb
