/** What if: variants of a study by uncertain inputs and scenarios, and what plans come to in them. */
package org.amberyard.study.whatif;
