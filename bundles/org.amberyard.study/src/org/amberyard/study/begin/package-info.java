/** A study begun with a few answers: what is not asked has defaults, and every element says that it was assumed. */
package org.amberyard.study.begin;
