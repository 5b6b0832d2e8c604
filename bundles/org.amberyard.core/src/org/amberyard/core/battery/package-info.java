/** How a battery behaves and ages: usable energy, state of charge, full cycles and fade. */
package org.amberyard.core.battery;
