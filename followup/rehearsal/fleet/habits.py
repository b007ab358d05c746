"""How the drivers, parts and technicians of an invented fleet behave. Spreads are log standard deviations.

Some of it the forecast does not know of: jobs and owners that change, wear that is not straight, winter sets without a
label, technicians with a bias of their own, numbers typed wrong. All values are assumptions.
"""

from __future__ import annotations

from dataclasses import dataclass, replace


@dataclass(frozen=True)
class Driving:
    """Miles: the median year up to the age of five, then less; drivers differ, wander, and change their job."""

    median_miles_a_year: float = 10_500.0
    full_use_years: float = 5.0
    decline_a_year: float = 0.05
    between_drivers: float = 0.42
    wander: float = 0.25
    wander_days: float = 180.0
    jumps_a_year: float = 0.10
    jump: float = 0.40
    summer_share: float = 0.12
    busiest_day: float = 200.0
    # Gamma noise with a coefficient of variation of 1 on each day.
    daily_variation: float = 1.0


@dataclass(frozen=True)
class Wearing:
    """One kind of part, two axles of two: how fast it wears (unit per 1,000 miles), and when it is changed.

    `owners_change_at` is the range of values at which owners have an axle replaced by themselves.
    """

    limit: float
    pace: float = 1.0
    new_spread: float = 0.6
    between_drivers: float = 0.28
    between_sets: float = 0.20
    between_sides: float = 0.08
    misaligned_share: float = 0.0
    misaligned_pace: float = 1.5
    bend: float = 0.0
    owners_change_at: tuple[float, float] = (1.5, 4.5)
    told_share: float = 0.45
    all_four_share: float = 0.0
    rotating_share: float = 0.0
    rotation_miles: float = 7_500.0
    rotation_told_share: float = 0.65


@dataclass(frozen=True)
class Reading:
    """What technicians make of it: `error` in the unit of the part, gauges with their steps and shares."""

    error: float
    operator_bias: float
    gauges: tuple[tuple[float, float], ...]
    missing_share: float = 0.08
    gross_share: float = 0.01


@dataclass(frozen=True)
class FleetHabits:
    """A whole fleet. Tread is in 32nds of an inch, pads are in mm."""

    driving: Driving = Driving()
    tires: Wearing = Wearing(
        limit=4.0, misaligned_share=0.04, bend=0.10, all_four_share=0.40, rotating_share=0.55,
    )  # fmt: skip
    pads: Wearing = Wearing(
        limit=3.0, between_drivers=0.38, between_sets=0.25, between_sides=0.07, owners_change_at=(1.0, 4.0)
    )
    # How far a hard driver's tires and pads suffer together.
    tires_with_pads: float = 0.4
    # Step of the gauge and its share: 1/32 in, or 0.1 mm (in 32nds); whole or half millimeters.
    tread_read: Reading = Reading(error=0.5, operator_bias=0.2, gauges=((1.0, 0.7), (3.2 / 25.4, 0.3)))
    pads_read: Reading = Reading(error=0.45, operator_bias=0.2, gauges=((1.0, 0.5), (0.5, 0.5)))
    winter_share: float = 0.08
    winter_labeled_share: float = 0.5
    typing_error_share: float = 0.01
    kilometers_share: float = 0.005
    first_use_error_days: float = 90.0
    visits: tuple[float, ...] = (0.40, 0.20, 0.14, 0.10, 0.08, 0.08)
    visit_gap_days: float = 185.0


AS_PUBLISHED = FleetHabits()


def _differing(habits: FleetHabits) -> FleetHabits:
    """Tread wears 1.4 times, pads 0.7 times as fast, people drive 1.3 times as far, gauges are read with 0.65 noise."""
    return replace(
        habits,
        driving=replace(habits.driving, median_miles_a_year=1.3 * habits.driving.median_miles_a_year),
        tires=replace(habits.tires, pace=1.4),
        pads=replace(habits.pads, pace=0.7),
        tread_read=replace(habits.tread_read, error=0.65 * habits.tread_read.error),
        pads_read=replace(habits.pads_read, error=0.65 * habits.pads_read.error),
    )


DIFFERING = _differing(AS_PUBLISHED)
