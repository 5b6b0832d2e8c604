/** Funding: what programmes pay for purchases, in which order and up to which limit, and what is earned and reimbursed in operation. */
package org.amberyard.core.funding;
