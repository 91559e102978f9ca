/** Where instruments drift to, and which of them to send away first. */
package wainbook.works.instruments.drift;
