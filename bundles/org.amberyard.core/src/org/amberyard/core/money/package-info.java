/** Money over time: cash flows, discounting, capital recovery and prices in constant or current terms. */
package org.amberyard.core.money;
