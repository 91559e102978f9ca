package wainbook.order.calibration;

import java.math.BigDecimal;

/**
 * The acceptance of an acceleration limit: the time from rest to a speed is the same empty and laden.
 *
 * @param toKmh the speed
 * @param toleranceS by how much the two times may differ, s
 * @param shaftKw power of the drive at the shaft that its torque is stated for, kW: it ends the limit at some speed
 */
public record SameTime(BigDecimal toKmh, BigDecimal toleranceS, BigDecimal shaftKw) {}
