/** Upkeep of buses and chargers: wear, work orders and their costs over the years. */
package org.amberyard.core.upkeep;
