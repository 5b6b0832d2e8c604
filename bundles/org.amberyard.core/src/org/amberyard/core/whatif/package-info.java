/**
 * The mathematics of What if, for any function of a vector of inputs: distributions of inputs, draws that can be
 * addressed by number, correlations between inputs, sensitivity, break-even lines, and a runner that gives the same
 * bits on any number of threads. Nothing here knows of buses.
 */
package org.amberyard.core.whatif;
