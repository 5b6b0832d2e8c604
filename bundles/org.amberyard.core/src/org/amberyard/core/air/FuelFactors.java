package org.amberyard.core.air;

/**
 * What burning a litre of fuel emits whatever the engine, and what was emitted before it came into the tank.
 *
 * @param burnt carbon dioxide and sulphur dioxide by fuel
 * @param upstream from well to tank by fuel
 */
public record FuelFactors(EmissionRates burnt, EmissionRates upstream) {
}
