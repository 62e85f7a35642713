// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/unit.hpp"
#include "core/tightening/clamp.hpp"
#include "core/tightening/lever.hpp"
#include "core/tightening/wanted.hpp"
#include "tests/property/random_case.hpp"

#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace clampwright::tightening {
namespace {

using quantity::Band;
using quantity::Energy;
using quantity::Force;
using quantity::in_newton_metres;
using quantity::in_newtons;
using quantity::newton_metres;
using quantity::newtons;
using quantity::Torque;
using test::between;
using test::mu;
using test::random_case;
using test::random_torque;
using test::relative;

const WrenchAccuracy k_exact{0.0, "of the test"};

ClampAnswer at(const Case& c, Torque torque) { return clamp(c, torque, k_exact).value(); }

double by_friction(const Case& c, Torque torque) { return in_newtons(at(c, torque).thread_friction->preload.likely); }
double by_k(const Case& c, Torque torque) { return in_newtons(at(c, torque).nut_factor->preload.likely); }

// Friction that may be raised: some at the start, and room above.
Case with_friction(double thread, double head, double k) {
  Case out = random_case();
  out.mu_thread = test::mu_band(thread);
  out.mu_head = test::mu_band(head);
  out.nut_factor = test::k_band(k);
  return out;
}

template<class T>
bool rises(const Band<T>& band) {
  return band.low <= band.likely && band.likely <= band.high;
}

template<class T>
bool rises(const std::optional<Band<T>>& band) {
  return !band || rises(*band);
}

} // namespace

TEST(Preload, OfATorqueNeedsThatTorque) {
  EXPECT_TRUE(rc::check([] {
    const Case c = random_case();
    const Torque torque = random_torque();
    const Force preload = at(c, torque).thread_friction->preload.likely;
    const Torque back = torque_for(c, {Aim::preload, preload, 0.0}, k_exact)->clamp.torque;
    RC_ASSERT(relative(in_newton_metres(back), in_newton_metres(torque)) <= 1e-12);
  }));
}

TEST(Preload, OfATorqueByNutFactorNeedsThatTorque) {
  EXPECT_TRUE(rc::check([] {
    Case c = random_case();
    c.face.reset();
    const Torque torque = random_torque();
    const Force preload = at(c, torque).nut_factor->preload.likely;
    const Torque back = torque_for(c, {Aim::preload, preload, 0.0}, k_exact)->clamp.torque;
    RC_ASSERT(relative(in_newton_metres(back), in_newton_metres(torque)) <= 1e-12);
  }));
}

TEST(Torque, ForAPreloadClampsThatPreload) {
  EXPECT_TRUE(rc::check([] {
    Case c = random_case();
    c.running_torque = newton_metres(between(0.0, 5.0));
    const Force preload = newtons(std::pow(10.0, between(2.0, 6.0)));
    const auto answer = torque_for(c, {Aim::preload, preload, 0.0}, k_exact).value();
    // Taking the running torque off again costs digits where it is much the greater part.
    const double lost =
        in_newton_metres(answer.clamp.torque) / in_newton_metres(answer.clamp.torque - *c.running_torque);
    RC_ASSERT(relative(in_newtons(answer.clamp.thread_friction->preload.likely), in_newtons(preload)) <= 1e-12 * lost);
  }));
}

TEST(Preload, GrowsWithTorque) {
  EXPECT_TRUE(rc::check([] {
    const Case c = random_case();
    const Torque torque = random_torque();
    const Torque more = torque * between(1.0001, 3.0);
    RC_ASSERT(by_friction(c, more) > by_friction(c, torque));
    RC_ASSERT(by_k(c, more) > by_k(c, torque));
  }));
}

TEST(Preload, IsLinearInTorque) {
  EXPECT_TRUE(rc::check([] {
    const Case c = random_case();
    const Torque torque = random_torque();
    const double factor = between(0.1, 10.0);
    RC_ASSERT(relative(by_friction(c, torque * factor), factor * by_friction(c, torque)) <= 1e-12);
    RC_ASSERT(relative(by_k(c, torque * factor), factor * by_k(c, torque)) <= 1e-12);
  }));
}

TEST(Preload, FallsWithFrictionInTheThread) {
  EXPECT_TRUE(rc::check([] {
    const double less = between(0.0, 0.4);
    Case c = with_friction(less, 0.12, 0.2);
    const Torque torque = random_torque();
    const double before = by_friction(c, torque);
    c.mu_thread = test::mu_band(less + between(0.0001, 0.1));
    RC_ASSERT(by_friction(c, torque) < before);
  }));
}

TEST(Preload, FallsWithFrictionUnderTheHead) {
  EXPECT_TRUE(rc::check([] {
    const double less = between(0.0, 0.4);
    Case c = with_friction(0.12, less, 0.2);
    const Torque torque = random_torque();
    const double before = by_friction(c, torque);
    c.mu_head = test::mu_band(less + between(0.0001, 0.1));
    RC_ASSERT(by_friction(c, torque) < before);
  }));
}

TEST(Preload, FallsWithTheNutFactor) {
  EXPECT_TRUE(rc::check([] {
    const double less = between(0.05, 0.4);
    Case c = with_friction(0.12, 0.12, less);
    const Torque torque = random_torque();
    const double before = by_k(c, torque);
    c.nut_factor = test::k_band(less + between(0.0001, 0.1));
    RC_ASSERT(by_k(c, torque) < before);
  }));
}

TEST(Preload, FallsWithTheRunningTorque) {
  EXPECT_TRUE(rc::check([] {
    Case c = random_case();
    const Torque torque = random_torque();
    const double before = by_friction(c, torque);
    c.running_torque = torque * between(0.001, 0.99);
    RC_ASSERT(by_friction(c, torque) < before);
  }));
}

// Work in is work out, as types too: a torque times a turn and a force times a lead are both energies.
TEST(FrictionlessThread, TurnsTheWorkOfOneTurnIntoForceTimesPitch) {
  EXPECT_TRUE(rc::check([] {
    const thread::Thread thread = test::random_thread();
    const Force preload = newtons(std::pow(10.0, between(0.0, 6.0)));
    const Torque torque = preload * thread_lever(thread, mu(0.0));
    const Energy turned = torque * quantity::one_turn();
    const Energy lifted = preload * thread.pitch;
    RC_ASSERT(std::abs(turned / lifted - 1.0) <= 1e-12);
  }));
}

TEST(ThreadWithFriction, TakesMoreWorkThanItLifts) {
  EXPECT_TRUE(rc::check([] {
    const thread::Thread thread = test::random_thread();
    const Torque torque = newtons(1000) * thread_lever(thread, mu(between(0.001, 1.0)));
    const Energy turned = torque * quantity::one_turn();
    const Energy lifted = newtons(1000) * thread.pitch;
    RC_ASSERT(turned > lifted);
  }));
}

TEST(Preload, IsTheSameInWhateverUnitTheTorqueIsGiven) {
  EXPECT_TRUE(rc::check([] {
    const Case c = random_case();
    const Torque torque = random_torque();
    for (const quantity::Unit& unit : quantity::all_units()) {
      if (unit.kind != quantity::Kind::torque) continue;
      const double number = quantity::from_si(in_newton_metres(torque), unit);
      const Torque again = newton_metres(quantity::to_si(number, unit));
      RC_ASSERT(relative(by_friction(c, again), by_friction(c, torque)) <= 1e-14);
    }
  }));
}

TEST(Preload, IsTheSameForAThreadMeasuredInInches) {
  EXPECT_TRUE(rc::check([] {
    Case c = random_case();
    const Torque torque = random_torque();
    const double before = by_friction(c, torque);
    const auto in_inches = [](quantity::Length length) {
      return quantity::inches(quantity::in_millimetres(length) / 25.4);
    };
    c.thread.diameter = in_inches(c.thread.diameter);
    c.thread.pitch = in_inches(c.thread.pitch);
    c.face = Face{in_inches(c.face->outer), in_inches(c.face->inner), "", {}};
    RC_ASSERT(relative(by_friction(c, torque), before) <= 1e-12);
  }));
}

TEST(EveryBand, Rises) {
  EXPECT_TRUE(rc::check([] {
    Case c = random_case();
    const Torque torque = random_torque();
    if (*rc::gen::arbitrary<bool>()) c.running_torque = torque * between(0.0, 0.999);
    const auto answer = clamp(c, torque, WrenchAccuracy{between(0.0, 0.5), "of the test"}).value();
    RC_ASSERT(rises(answer.nut_factor->preload));
    RC_ASSERT(rises(answer.nut_factor->use_of_proof));
    RC_ASSERT(rises(answer.thread_friction->preload));
    RC_ASSERT(rises(answer.thread_friction->use_of_proof));
    RC_ASSERT(rises(answer.thread_friction->use_of_yield));
  }));
}

TEST(EveryBandOfTorque, Rises) {
  EXPECT_TRUE(rc::check([] {
    const auto answer =
        torque_for(random_case(), {Aim::preload, newtons(std::pow(10.0, between(2.0, 6.0))), 0.0}).value();
    RC_ASSERT(rises(answer.clamp.thread_friction->torque));
    RC_ASSERT(rises(answer.clamp.nut_factor->torque));
  }));
}

TEST(EveryPreload, IsFiniteAndNotNegative) {
  EXPECT_TRUE(rc::check([] {
    const auto answer = clamp(random_case(), random_torque()).value();
    for (const Force force : {answer.thread_friction->preload.low, answer.thread_friction->preload.high,
                              answer.nut_factor->preload.low, answer.nut_factor->preload.high})
      RC_ASSERT(std::isfinite(in_newtons(force)) && in_newtons(force) >= 0.0);
  }));
}

TEST(EveryShareOfTorque, LiesBetweenNoneAndAllAndAddsToOne) {
  EXPECT_TRUE(rc::check([] {
    const auto share = at(random_case(), random_torque()).thread_friction->share;
    for (const double part : {share.lift, share.thread, share.head})
      RC_ASSERT(part >= -1e-15 && part <= 1.0 + 1e-15);
    RC_ASSERT(std::abs(share.lift + share.thread + share.head - 1.0) <= 1e-14);
  }));
}

TEST(EveryFrictionAtYield, GivesAUseOfOne) {
  EXPECT_TRUE(rc::check([] {
    const Case c = random_case();
    const Torque torque = random_torque();
    const auto friction = at(c, torque).thread_friction->mu_at_yield;
    if (friction) RC_ASSERT(std::abs(use_of_yield(c, torque, mu(*friction), mu(*friction)) - 1.0) <= 1e-9);
  }));
}

} // namespace clampwright::tightening
