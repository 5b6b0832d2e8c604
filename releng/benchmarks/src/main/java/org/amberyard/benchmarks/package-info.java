/** Benchmarks of the method's inner loops. */
package org.amberyard.benchmarks;
