/** The pages of near misses, safety stops and visitors. */
package wainbook.safety.page;
