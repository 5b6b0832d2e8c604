package org.amberyard.core.charging;

/**
 * Energy that a session lacks however the month is charged. The sum over a stretch is the least possible; on whom it falls is a
 * choice where several could give way.
 *
 * @param stretch place of the stretch in its month
 * @param session place of the session in its stretch
 * @param kwh energy at the meter that it lacks each time, kWh
 */
public record SessionShortfall(int stretch, int session, double kwh) {
}
