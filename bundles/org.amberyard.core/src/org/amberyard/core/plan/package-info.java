/** Replacement plans: which bus goes when, what takes its place and how plans compare. */
package org.amberyard.core.plan;
