"""What the other axles of a car say about the wear of one: the driver is the same.

Each axle sends a message about its log wear rate; the prior of each is then built from the messages of the others.
Tires speak to tires, pads to pads.
"""

from __future__ import annotations

import numpy as np

from followup.core.forecast.season import Array

# A message that says less than this share of the prior says nothing.
_LEAST_SAID = 0.02
# Messages of one car share an operator and a way of measuring: each counts for less when there are many.
_SHARED = 0.12
# Surprising messages count for less, as under a t distribution of four degrees of freedom.
_FREEDOM = 4.0


def pooled_prior(
    group: np.ndarray,
    usual: Array,
    between_cars: Array,
    between_items: Array,
    log_rate: Array,
    variance: Array,
) -> tuple[Array, Array]:
    """Prior mean and variance of the log rate of each axle, by all others of its `group` (0, 1, 2 ...), rows.

    `usual` is the log rate of the population, `log_rate`, `variance` what the axle's own readings make of it.
    """
    population = between_cars**2 + between_items**2
    said = np.maximum(1 / variance - 1 / population, 0.0)
    said = np.where(said * population < _LEAST_SAID, 0.0, said)
    safe = np.maximum(said, 1e-9)
    heard = np.where(said > 0, (log_rate / variance - usual / population) / safe, usual)
    surprise = (heard - usual) ** 2 / (population + 1 / safe)
    weight = said / (1 + between_items**2 * said) * np.minimum(1.0, (_FREEDOM + 1) / (_FREEDOM + surprise))
    groups = int(group.max()) + 1 if len(group) else 0

    def total(of: Array) -> Array:
        return np.asarray(np.bincount(group, of, minlength=groups)[group])

    messages = total((said > 0).astype(float))
    weight = weight / (1 + _SHARED * np.maximum(messages - 1, 0.0))
    precision = 1 / between_cars**2 + np.maximum(total(weight) - weight, 0.0)
    pull = weight * (heard - usual)
    return usual + (total(pull) - pull) / precision, between_items**2 + 1 / precision
