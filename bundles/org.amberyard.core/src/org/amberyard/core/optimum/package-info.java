/** Choices of one option in each of several groups that share what is scarce: the cheapest set found, and a bound below which none lies. */
package org.amberyard.core.optimum;
