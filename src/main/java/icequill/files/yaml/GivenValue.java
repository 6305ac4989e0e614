package icequill.files.yaml;

import icequill.problem.Place;

/** A value as somebody gave it, and where. */
public record GivenValue(String text, Place place) {}
