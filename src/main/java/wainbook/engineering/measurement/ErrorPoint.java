package wainbook.engineering.measurement;

import wainbook.engineering.Domain;

/**
 * An instrument's error at one point of its calibration.
 *
 * @param errorPercent (shown − true) / true
 */
public record ErrorPoint(
        @Domain(above = 0) double nm, @Domain(above = -100) double errorPercent) {}
