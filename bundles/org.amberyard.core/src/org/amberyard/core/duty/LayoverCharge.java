package org.amberyard.core.duty;

/**
 * Charging between two runs at the yard.
 *
 * @param fromMin when the bus comes, minutes after midnight
 * @param toMin when it leaves, minutes after midnight
 * @param batteryKwh energy into the battery, kWh
 */
public record LayoverCharge(double fromMin, double toMin, double batteryKwh) {
}
