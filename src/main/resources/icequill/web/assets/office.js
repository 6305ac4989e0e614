// Helps whoever types: what a form would show is fetched while he does. Without it every page works by its buttons.
'use strict';
(() => {
    const problems = document.querySelector('.problems');
    if (problems) problems.focus();
    document.querySelectorAll('form[data-live]').forEach(form => {
        const target = document.getElementById(form.dataset.live);
        let asked = 0;
        let timer;
        const fetchNow = async () => {
            const mine = ++asked;
            const query = new URLSearchParams(new FormData(form)).toString();
            const address = form.action.split('?')[0] + '?' + query;
            try {
                const answer = await fetch(address, { headers: { Accept: 'text/html' } });
                if (!answer.ok) return;
                const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
                const piece = page.getElementById(form.dataset.live);
                // A late answer to earlier letters is dropped.
                if (piece && mine === asked) {
                    target.replaceChildren(...piece.childNodes);
                    history.replaceState(null, '', address);
                }
            } catch (away) {
                // The button still asks.
            }
        };
        form.addEventListener('input', () => {
            clearTimeout(timer);
            timer = setTimeout(fetchNow, 150);
        });
    });

    // What was shown of a form's first values goes once others are typed.
    document.querySelectorAll('form[data-clears]').forEach(form => form.addEventListener('input', () => {
        const shown = document.getElementById(form.dataset.clears);
        if (shown) shown.remove();
    }));
    // The piece of a page that an answer has under an id, put in the place of ours.
    const put = (text, id) => {
        const piece = new DOMParser().parseFromString(text, 'text/html').getElementById(id);
        if (piece) document.getElementById(id).replaceChildren(...piece.childNodes);
    };
    // Work that takes long is looked at again until it ends.
    const watch = () => {
        const watched = document.querySelector('[data-watch]');
        if (!watched) return;
        setTimeout(async () => {
            try {
                const answer = await fetch(location.href, { headers: { Accept: 'text/html' } });
                const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
                const piece = page.getElementById(watched.id);
                if (answer.ok && piece && !watched.contains(document.activeElement)) watched.replaceWith(piece);
                else if (answer.ok && piece && !piece.dataset.watch) watched.replaceWith(piece);
            } catch (away) {
                // The next look will tell.
            }
            watch();
        }, 700);
    };
    watch();
    document.querySelectorAll('form[data-price]').forEach(form => {
        let asked = 0;
        let timer;
        const price = async () => {
            const mine = ++asked;
            try {
                const answer = await fetch(form.dataset.price, { method: 'POST', body: new URLSearchParams(new FormData(form)) });
                const text = await answer.text();
                if (answer.ok && mine === asked) put(text, 'price');
            } catch (away) {
                // The button still asks.
            }
        };
        form.addEventListener('input', () => {
            clearTimeout(timer);
            timer = setTimeout(price, 300);
        });
        // What a box is about is told of once it is ticked; a machine's number key does it, where nothing is typed.
        const boxes = form.querySelectorAll('input[data-opens]');
        const show = box => { document.getElementById(box.dataset.opens).hidden = !box.checked; };
        boxes.forEach(box => {
            show(box);
            box.addEventListener('change', () => show(box));
        });
        document.addEventListener('keydown', event => {
            const typing = event.target.closest('input:not([type=checkbox]), textarea, select');
            if (typing || event.ctrlKey || event.altKey || event.metaKey) return;
            boxes.forEach(box => {
                if (box.dataset.digit === event.key) box.click();
            });
        });
        // Enter in a field stores nothing; with Ctrl it does.
        const main = form.querySelector('[data-main]');
        form.addEventListener('keydown', event => {
            if (event.key !== 'Enter' || event.defaultPrevented) return;
            if (event.ctrlKey || event.metaKey) {
                event.preventDefault();
                form.requestSubmit(main);
            } else if (event.target.matches('input')) {
                event.preventDefault();
            }
        });
        // A grade follows the name that it is known for.
        form.addEventListener('change', event => {
            const known = event.target.list && [...event.target.list.options]
                .find(option => option.value === event.target.value && option.dataset.grade);
            const grade = known && form.elements[event.target.name.replace(/name$/, 'grade')];
            if (grade) grade.value = known.dataset.grade;
        });
        let sent = false;
        addEventListener('pageshow', () => { sent = false; });
        form.addEventListener('submit', event => {
            if (event.submitter && event.submitter.hasAttribute('formaction')) return;
            if (sent) event.preventDefault();
            sent = true;
        });
    });

    // There is always one more row than are filled.
    document.querySelectorAll('[data-rows]').forEach(rows => rows.addEventListener('input', event => {
        const row = event.target.closest('[data-row]');
        const all = rows.querySelectorAll('[data-row]');
        if (!row || row !== all[all.length - 1] || !event.target.value) return;
        const [, what, number] = row.dataset.row.match(/^(.*?)(\d+)$/);
        const next = row.cloneNode(true);
        const renumbered = text => text.replace(new RegExp('\\b(accepted|' + what + ')' + number + '(?!\\d)', 'g'),
            '$1' + (Number(number) + 1));
        [next, ...next.querySelectorAll('*')].forEach(element => {
            for (const attribute of element.attributes) attribute.value = renumbered(attribute.value);
            if (element.matches('input, textarea')) element.value = '';
            if (element.matches('.error')) element.remove();
        });
        next.querySelectorAll('label').forEach(label => {
            label.textContent = label.textContent.replace(String(Number(number) + 1), String(Number(number) + 2));
        });
        row.after(next);
    }));
    // Prices come first, what takes longer after them. While an answer is under way only the newest question waits for it.
    document.querySelectorAll('form[data-figures]').forEach(form => {
        const working = form.querySelector('.working');
        let running = false;
        let again = false;
        let timer;
        const part = async name => {
            const fields = new URLSearchParams(new FormData(form));
            fields.append('part', name);
            const answer = await fetch(form.dataset.figures, { method: 'POST', body: fields });
            if (answer.ok) put(await answer.text(), name);
        };
        const figures = async () => {
            again = true;
            if (running) return;
            running = true;
            const patience = setTimeout(() => { working.hidden = false; }, 500);
            try {
                while (again) {
                    again = false;
                    await part('ways');
                    if (!again) await part('ahead');
                }
            } catch (away) {
                // The button still asks.
            }
            clearTimeout(patience);
            working.hidden = true;
            running = false;
        };
        form.addEventListener('input', () => {
            clearTimeout(timer);
            timer = setTimeout(figures, 300);
        });
        if ('now' in form.dataset) figures();
        // A machine's number key ticks it, where nothing is typed.
        document.addEventListener('keydown', event => {
            const typing = event.target.closest('input:not([type=checkbox]), textarea, select');
            if (typing || event.ctrlKey || event.altKey || event.metaKey) return;
            form.querySelectorAll('input[data-digit]').forEach(box => {
                if (box.dataset.digit === event.key) box.click();
            });
        });
        let sent = false;
        addEventListener('pageshow', () => { sent = false; });
        form.addEventListener('submit', event => {
            const asks = event.submitter && event.submitter.getAttribute('formaction');
            if (asks === form.dataset.figures) {
                event.preventDefault();
                figures();
            }
            if (asks) return;
            if (sent) event.preventDefault();
            sent = true;
        });
    });
})();
