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
        // A machine is told of once it is ticked; its number key does it, where nothing is typed.
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
        let sent = false;
        form.addEventListener('submit', event => {
            if (event.submitter && event.submitter.formAction.endsWith('/price')) return;
            if (sent) event.preventDefault();
            sent = true;
        });
    });
})();
